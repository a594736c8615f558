#include "models/brain/add_cortex.h"

#include "geometry/base/error.h"
#include "models/files/error.h"

namespace scalpmark::models {

void add_cortex(LoadedHead& loaded, const TemplateFiles& files, const Progress& progress) {
  try {
    const auto brain = load_template_brain(files, progress);
    const auto cortex = std::make_shared<const geometry::Cortex>(brain, loaded.head);
    if (cortex->pushed_mm() > 0)
      loaded.notes.push_back(Message::of(
          "The template's brain was pushed in by up to %1 mm over %2 % of it, to stay %3 mm under the skin.",
          geometry::number(cortex->pushed_mm()), geometry::number(100 * cortex->pushed_share()),
          geometry::number(geometry::Cortex::nearest_to_skin_mm)));
    loaded.cortex = cortex;
  } catch (const ModelError& error) {
    loaded.notes.push_back(error.message());
  } catch (const geometry::GeometryError& error) {
    loaded.notes.push_back(error.message());
  }
}

}  // namespace scalpmark::models
