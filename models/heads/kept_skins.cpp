#include "models/heads/kept_skins.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstring>
#include <fstream>
#include <string>
#include <string_view>
#include <system_error>
#include <utility>
#include <vector>

#include "geometry/base/error.h"
#include "models/files/byte_key.h"
#include "models/files/keyed_file.h"
#include "models/files/made_by.h"
#include "models/files/safe_file.h"
#include "models/heads/message_bytes.h"

namespace scalpmark::models {

namespace {

namespace fs = std::filesystem;

// Counts up when what is kept changes, or what reading makes of a file.
constexpr std::string_view kept_skin_magic = "scalpmark-skin 1\n";
constexpr std::string_view kept_skin_end = ".skin";
constexpr std::size_t largest_kept = std::size_t{64} << 20U;  // bytes; about 4 MB are usual

std::string kept_name(std::uint64_t key) {
  std::array<char, 17> text{};
  std::snprintf(text.data(), text.size(), "%016llx", static_cast<unsigned long long>(key));
  return text.data() + std::string(kept_skin_end);
}

template <class Number>
void put_number(std::string& bytes, Number value) {
  std::array<char, sizeof(Number)> raw{};
  std::memcpy(raw.data(), &value, sizeof(Number));
  bytes.append(raw.data(), raw.size());
}

std::string kept_bytes(std::uint64_t key, const SkinImport& read) {
  std::string bytes(kept_skin_magic);
  put_number(bytes, key);
  put_number(bytes, std::uint64_t{read.skin.vertices().size()});
  for (const auto& v : read.skin.vertices())
    for (int k = 0; k < 3; ++k) put_number(bytes, v[k]);
  put_number(bytes, std::uint64_t{read.skin.triangles().size()});
  for (const auto& t : read.skin.triangles())
    for (const int corner : t) put_number(bytes, static_cast<std::int32_t>(corner));
  put_number(bytes, std::uint64_t{read.notes.size()});
  for (const Message& note : read.notes) {
    const std::string text = bytes_of(note);
    put_number(bytes, std::uint64_t{text.size()});
    bytes += text;
  }
  put_number(bytes, byte_key(bytes));
  return bytes;
}

/// Takes apart what kept_bytes put together; anything else is nothing.
std::optional<SkinImport> skin_from(const fs::path& file, std::uint64_t key) {
  static_assert(sizeof(Eigen::Vector3d) == 3 * sizeof(double) &&
                sizeof(geometry::Triangle) == 3 * sizeof(std::int32_t));
  KeyedFile in(file, largest_kept);
  std::string begins(kept_skin_magic.size(), '\0');
  std::uint64_t own_key = 0;
  std::size_t count = 0;
  if (!in.take(begins.data(), begins.size()) || begins != kept_skin_magic || !in.take_number(own_key) ||
      own_key != key || !in.take_count(count, sizeof(Eigen::Vector3d)))
    return {};
  std::vector<Eigen::Vector3d> vertices(count);
  if (!in.take(vertices.data(), count * sizeof(Eigen::Vector3d))) return {};
  if (!in.take_count(count, sizeof(geometry::Triangle))) return {};
  std::vector<geometry::Triangle> triangles(count);
  if (!in.take(triangles.data(), count * sizeof(geometry::Triangle))) return {};
  std::size_t notes_count = 0;
  if (!in.take_count(notes_count, sizeof count)) return {};
  std::vector<Message> notes;
  for (std::size_t i = 0; i < notes_count; ++i) {
    if (!in.take_count(count, 1)) return {};
    std::string text(count, '\0');
    if (!in.take(text.data(), count)) return {};
    auto note = message_from(text);
    if (!note) return {};
    notes.push_back(std::move(*note));
  }
  if (!in.ends_well()) return {};
  return SkinImport{geometry::Surface(std::move(vertices), std::move(triangles)), std::move(notes)};
}

struct KeptFile {
  fs::path file;
  fs::file_time_type used;
};

/// The last used first.
std::vector<KeptFile> kept_files(const fs::path& folder) {
  std::vector<KeptFile> all;
  std::error_code wrong;
  for (const auto& entry : fs::directory_iterator(folder, wrong))
    if (entry.path().extension() == kept_skin_end)
      all.push_back({entry.path(), fs::last_write_time(entry.path(), wrong)});
  std::sort(all.begin(), all.end(), [](const KeptFile& a, const KeptFile& b) { return a.used > b.used; });
  return all;
}

}  // namespace

KeptSkins::KeptSkins() : folder_(cache_folder()) {
  if (!folder_.empty()) folder_ /= "heads";
}

std::optional<std::uint64_t> KeptSkins::key_of(const SkinRequest& request) const {
  std::error_code wrong;
  const std::string end = request.file.extension().string();
  if (folder_.empty() || !fs::is_regular_file(request.file, wrong)) return {};
  if (request.kind == HeadKind::mesh && end != ".ply" && end != ".stl" && end != ".obj") return {};
  std::string asked(kept_skin_magic);
  asked += made_by();  // another version may read otherwise
  asked += end;
  put_number(asked, static_cast<std::int32_t>(request.kind));
  put_number(asked, request.unit ? static_cast<std::int32_t>(*request.unit) : std::int32_t{-1});
  std::uint64_t key = byte_key(asked);
  std::ifstream in(request.file, std::ios::binary);
  std::vector<char> part(std::size_t{1} << 20U);
  std::uint64_t length = 0;
  while (in) {
    in.read(part.data(), static_cast<std::streamsize>(part.size()));
    const auto got = static_cast<std::size_t>(in.gcount());
    key = byte_key({part.data(), got}, key);
    length += got;
  }
  if (!in.eof() || length == 0) return {};
  std::string ended;
  put_number(ended, length);
  return byte_key(ended, key);
}

std::optional<SkinImport> KeptSkins::find(std::uint64_t key) const {
  const fs::path file = folder_ / kept_name(key);
  std::error_code wrong;
  if (folder_.empty() || !fs::is_regular_file(file, wrong)) return {};
  try {
    auto found = skin_from(file, key);
    if (found) fs::last_write_time(file, fs::file_time_type::clock::now(), wrong);
    return found;
  } catch (const geometry::GeometryError&) {
    return {};
  }
}

void KeptSkins::keep(std::uint64_t key, const SkinImport& read) const noexcept {
  if (folder_.empty()) return;
  try {
    const std::string bytes = kept_bytes(key, read);
    if (bytes.size() > largest_kept) return;
    fs::create_directories(folder_);
    fs::permissions(folder_, fs::perms::owner_all);
    write_whole(folder_ / kept_name(key), bytes);
    const std::vector<KeptFile> all = kept_files(folder_);
    std::error_code ignored;  // an older one that stays takes room, no more
    for (std::size_t i = most; i < all.size(); ++i) fs::remove(all[i].file, ignored);
  } catch (...) {
    return;  // a favour; the file is read again next time
  }
}

std::size_t KeptSkins::forget() const noexcept {
  std::size_t count = 0;
  try {
    if (folder_.empty()) return 0;
    std::error_code wrong;
    for (const KeptFile& each : kept_files(folder_))
      if (fs::remove(each.file, wrong)) ++count;
  } catch (...) {
    return count;
  }
  return count;
}

SkinReading read_once(SkinReading read, KeptSkins kept) {
  return
      [read = std::move(read), kept = std::move(kept)](const SkinRequest& request, const Progress& progress) {
        const auto key = kept.key_of(request);
        if (key)
          if (auto found = kept.find(*key)) return std::move(*found);
        SkinImport skin = read(request, progress);
        // Unless the file has changed meanwhile, and nobody knows which of the two was read.
        if (key && kept.key_of(request) == key) kept.keep(*key, skin);
        return skin;
      };
}

}  // namespace scalpmark::models
