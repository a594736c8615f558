#include "models/mri/mri_file.h"

#include "models/files/error.h"
#include "models/mri/nifti_volume.h"
#include "models/mri/volume_surface.h"

namespace scalpmark::models {

namespace {

constexpr std::size_t most_skin_triangles = 150000;

}  // namespace

SkinImport read_mri(const std::filesystem::path& file, const Progress& progress) {
  if (progress) progress(Message::of("reading the volume"), 0);
  NiftiVolume read = read_nifti(file);
  const Progress rest = [&](const Message& what, double fraction) {
    if (progress) progress(what, 0.2 + 0.8 * fraction);
  };
  return {surface_of(read.volume, file.string(), most_skin_triangles, rest), std::move(read.notes)};
}

}  // namespace scalpmark::models
