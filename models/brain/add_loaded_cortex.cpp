#include "geometry/base/error.h"
#include "models/brain/add_cortex.h"
#include "models/files/error.h"

namespace scalpmark::models {

void add_loaded_cortex(LoadedHead& loaded, const std::function<LoadedTemplate()>& load,
                       const TemplateFiles& files) {
  try {
    const LoadedTemplate loaded_brain = load();
    if (!loaded_brain.stays)
      loaded.notes.push_back(
          files.cache.empty()
              ? Message::of(
                    "The template's brain is made anew each time, which takes some seconds, because this user has no folder to keep it in; set HOME, or leave the brain out.")
              : Message::of(
                    "The template's brain is made anew each time, which takes some seconds, because it cannot be kept in %1; make that folder writable, or leave the brain out.",
                    files.cache.string()));
    const auto cortex = std::make_shared<const geometry::Cortex>(loaded_brain.brain, loaded.head);
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
