#include "models/heads/load_head.h"

#include "models/files/error.h"
#include "models/heads/built_in_head.h"

namespace scalpmark::models {

LoadedHead load_head(const HeadSource& source, const std::filesystem::path& folder,
                     const geometry::MeasuredTapes& tapes, const Progress& progress,
                     const SkinReading& reading) {
  if (source.kind == HeadKind::generic) return built_in_head(tapes);
  if (!source.fiducials)
    throw ModelError(
        Message::of("The head %1 has no nasion, inion and tragi yet; place the four points first.",
                    source.file.string()));
  const std::filesystem::path file =
      source.file.is_absolute() ? source.file : folder / source.file;  // an empty folder is the current one
  const bool mesh = source.kind == HeadKind::mesh;
  SkinImport read = reading({source.kind, file, source.unit}, progress);
  return {geometry::Head(std::move(read.skin), *source.fiducials),
          (mesh ? Message::of("scan %1", file.filename().string())
                : Message::of("MRI %1", file.filename().string())),
          std::move(read.notes)};
}

}  // namespace scalpmark::models
