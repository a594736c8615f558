#pragma once

#include <filesystem>
#include <functional>
#include <memory>
#include <vector>

#include "geometry/brain/cortex.h"
#include "models/files/cache_folder.h"
#include "models/meshes/skin_import.h"

namespace scalpmark::models {

/// Where the template's files lie and where what is made of them is kept.
struct TemplateFiles {
  std::filesystem::path folder = "/usr/share/mricron/templates";  ///< of the Debian package mricron-data
  std::filesystem::path cache = cache_folder();                   ///< empty: nothing is kept

  /// What of the package is read.
  [[nodiscard]] std::vector<std::filesystem::path> read() const;
};

/// The brain, and whether it is there the next time without being made again.
struct LoadedTemplate {
  std::shared_ptr<const geometry::TemplateBrain> brain;
  bool stays = true;
};

/// A way to make the brain of the package's files.
using TemplateMaking = std::function<geometry::TemplateBrain(const TemplateFiles&, const Progress&)>;

/// Makes it here, in this process; in a file of its own, for a program that leaves making to others. Refuses
/// (ModelError, geometry::GeometryError) files that do not go together.
[[nodiscard]] geometry::TemplateBrain make_template_brain(const TemplateFiles& files,
                                                          const Progress& progress);

/// The brain of the one person whose head volume, brain volume and two atlases (Brodmann areas; gyri) the
/// package mricron-data holds: surface, 10-10 positions of that person's head, regions. Made (by `make`) in a
/// few seconds the first time, then kept in the cache under a name that follows from the files' bytes; a
/// cache that cannot be written or is damaged does no harm. While some head still has the brain of the same
/// bytes, that one is given again. Thread-safe. Refuses (ModelError): a package that is not installed, saying
/// what to install; files that cannot be read or do not go together.
[[nodiscard]] LoadedTemplate load_template_brain(const TemplateFiles& files = {},
                                                 const Progress& progress = {},
                                                 const TemplateMaking& make = make_template_brain);

}  // namespace scalpmark::models
