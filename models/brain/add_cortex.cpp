#include "models/brain/add_cortex.h"

namespace scalpmark::models {

void add_cortex(LoadedHead& loaded, const TemplateFiles& files, const Progress& progress) {
  add_loaded_cortex(
      loaded, [&] { return load_template_brain(files, progress); }, files);
}

}  // namespace scalpmark::models
