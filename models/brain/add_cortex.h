#pragma once

#include <functional>

#include "models/brain/template_brain.h"
#include "models/heads/load_head.h"

namespace scalpmark::models {

/// Brings the template's brain under a loaded head (geometry::Cortex). Where it cannot, the head stays
/// without and a note says why and what to install; a note also says how far the brain had to be pushed in.
void add_cortex(LoadedHead& loaded, const TemplateFiles& files = {}, const Progress& progress = {});

/// The same with a brain that `load` gives, or refuses as load_template_brain of these files does.
void add_loaded_cortex(LoadedHead& loaded, const std::function<LoadedTemplate()>& load,
                       const TemplateFiles& files = {});

}  // namespace scalpmark::models
