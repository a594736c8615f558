#include "models/brain/template_brain.h"

#include <cstdint>
#include <mutex>
#include <system_error>

#include "geometry/base/error.h"
#include "models/brain/template_cache.h"
#include "models/brain/template_names.h"
#include "models/files/byte_key.h"
#include "models/files/error.h"
#include "models/files/file_key.h"

namespace scalpmark::models {

namespace fs = std::filesystem;
using geometry::TemplateBrain;

namespace {

/// Of the bytes of all files.
std::uint64_t key_of(const TemplateNames& names) {
  std::uint64_t key = no_bytes;
  for (const fs::path& file : names.all()) {
    std::error_code ignored;
    if (!fs::exists(file, ignored))
      throw ModelError(Message::of(
          "The brain under the skin is left out, because %1 is missing; install the Debian package mricron-data to see it.",
          file.string()));
    key = key_of_file(file, TemplateNames::largest_file, key);
  }
  return key;
}

}  // namespace

std::vector<fs::path> TemplateFiles::read() const {
  const auto names = TemplateNames(folder).all();
  return {names.begin(), names.end()};
}

LoadedTemplate load_template_brain(const TemplateFiles& files, const Progress& progress,
                                   const TemplateMaking& make) {
  const TemplateNames names(files.folder);
  const std::uint64_t key = key_of(names);
  // One head after another gets the same brain; as long as one of them has it, it is not read again.
  static std::mutex guard;
  static std::uint64_t last_key = 0;
  static std::weak_ptr<const TemplateBrain> last;
  const auto remember = [&](TemplateBrain&& brain) {
    auto shared = std::make_shared<const TemplateBrain>(std::move(brain));
    const std::lock_guard lock(guard);
    last_key = key;
    last = shared;
    return shared;
  };
  {
    const std::lock_guard lock(guard);
    if (last_key == key)
      if (auto known = last.lock()) return {std::move(known)};
  }
  if (auto kept = read_template_cache(files.cache, key)) return {remember(std::move(*kept))};
  try {
    TemplateBrain brain = make(files, progress);
    const bool stays = write_template_cache(files.cache, key, brain);
    return {remember(std::move(brain)), stays};
  } catch (const geometry::GeometryError& error) {
    throw ModelError(Message::of(
        "The template's head in %1 cannot be measured (%2); install the package mricron-data again.",
        files.folder.string(), error.message()));
  }
}

}  // namespace scalpmark::models
