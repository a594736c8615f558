#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>

#include "models/files/cache_folder.h"
#include "models/heads/skin_reading.h"

namespace scalpmark::models {

/// Skins as reading left them, so that a scan or MRI opens at once the second time. The file itself stays the
/// truth: a skin is found again by all of its file's bytes, its kind and unit, and the way this version
/// reads; no name is kept. For this user alone (a head is a patient's), the last twenty used, each whole or
/// not at all; a folder that cannot be written or is damaged does no harm.
class KeptSkins {
public:
  static constexpr std::size_t most = 20;

  /// Without a folder of the user's, nothing is kept.
  KeptSkins();
  explicit KeptSkins(std::filesystem::path folder) : folder_(std::move(folder)) {}

  /// What its skin is found by. Nothing for what is not kept: a file that cannot be read, and glTF, whose
  /// data may lie in other files.
  [[nodiscard]] std::optional<std::uint64_t> key_of(const SkinRequest& request) const;
  [[nodiscard]] std::optional<SkinImport> find(std::uint64_t key) const;
  void keep(std::uint64_t key, const SkinImport& read) const noexcept;
  /// Removes all. How many there were.
  std::size_t forget() const noexcept;

private:
  std::filesystem::path folder_;
};

/// Reads as `read` does, but takes what was read before from what is kept.
[[nodiscard]] SkinReading read_once(SkinReading read, KeptSkins kept = {});

}  // namespace scalpmark::models
