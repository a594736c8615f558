#include "models/brain/add_cortex.h"

#include "geometry/base/error.h"
#include "geometry/base/text.h"
#include "models/files/error.h"

namespace scalpmark::models {

using geometry::to_text;

void add_cortex(LoadedHead& loaded, const TemplateFiles& files, const Progress& progress) {
  try {
    const auto brain = load_template_brain(files, progress);
    const auto cortex = std::make_shared<const geometry::Cortex>(brain, loaded.head);
    if (cortex->pushed_mm() > 0)
      loaded.notes.push_back("The template's brain was pushed in by up to " + to_text(cortex->pushed_mm()) +
                             " mm over " + to_text(100 * cortex->pushed_share()) + " % of it, to stay " +
                             to_text(geometry::Cortex::nearest_to_skin_mm) + " mm under the skin.");
    loaded.cortex = cortex;
  } catch (const ModelError& error) {
    loaded.notes.emplace_back(error.what());
  } catch (const geometry::GeometryError& error) {
    loaded.notes.emplace_back(error.what());
  }
}

}  // namespace scalpmark::models
