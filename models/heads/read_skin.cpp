#include "models/heads/skin_reading.h"
#include "models/meshes/mesh_file.h"
#include "models/mri/mri_file.h"

namespace scalpmark::models {

SkinImport read_skin(const SkinRequest& request, const Progress& progress) {
  return request.kind == HeadKind::mri ? read_mri(request.file, progress)
                                       : read_mesh(request.file, request.unit, progress);
}

}  // namespace scalpmark::models
