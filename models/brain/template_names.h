#pragma once

#include <array>
#include <cstddef>
#include <filesystem>

namespace scalpmark::models {

/// The files of the package mricron-data that the template's brain is made of.
struct TemplateNames {
  static constexpr std::size_t largest_file = std::size_t{64} << 20U;  // bytes; the package's are under 8 MB
  std::filesystem::path head, brain, areas, gyri, gyrus_text;
  explicit TemplateNames(const std::filesystem::path& folder)
      : head(folder / "ch2.nii.gz"),
        brain(folder / "ch2bet.nii.gz"),
        areas(folder / "brodmann.nii.gz"),
        gyri(folder / "aal.nii.gz"),
        gyrus_text(folder / "aal.nii.txt") {}
  [[nodiscard]] std::array<std::filesystem::path, 5> all() const {
    return {head, brain, areas, gyri, gyrus_text};
  }
};

}  // namespace scalpmark::models
