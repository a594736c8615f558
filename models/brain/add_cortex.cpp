#include "models/brain/add_cortex.h"

#include "geometry/base/error.h"
#include "geometry/base/text.h"
#include "models/files/error.h"

namespace scalpmark::models {

using geometry::to_text;

void add_cortex(LoadedHead& loaded, const TemplateFiles& files, const Progress& progress) {
  try {
    const LoadedTemplate loaded_brain = load_template_brain(files, progress);
    if (!loaded_brain.stays)
      loaded.notes.push_back(
          files.cache.empty()
              ? "The template's brain is made anew each time, which takes some seconds, because this user has no "
                "folder to keep it in; set HOME, or leave the brain out."
              : "The template's brain is made anew each time, which takes some seconds, because it cannot be kept "
                "in " +
                    files.cache.string() + "; let that folder be written, or leave the brain out.");
    const auto cortex = std::make_shared<const geometry::Cortex>(loaded_brain.brain, loaded.head);
    if (cortex->pushed_mm() > 0)
      loaded.notes.push_back("The template's brain was pushed in by up to " + to_text(cortex->pushed_mm()) +
                             " mm over " + to_text(100 * cortex->pushed_share()) + " % of it, to stay " +
                             to_text(geometry::Cortex::nearest_to_skin_mm) + " mm under the skin.");
    loaded.head = loaded.head.with_cortex(cortex);
  } catch (const ModelError& error) {
    loaded.notes.emplace_back(error.what());
  } catch (const geometry::GeometryError& error) {
    loaded.notes.emplace_back(error.what());
  }
}

}  // namespace scalpmark::models
