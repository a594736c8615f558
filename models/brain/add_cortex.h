#pragma once

#include "models/brain/template_brain.h"
#include "models/heads/load_head.h"

namespace scalpmark::models {

/// Brings the template's brain under a loaded head (geometry::Cortex). Where it cannot, the head stays
/// without and a note says why and what to install; a note also says how far the brain had to be pushed in.
void add_cortex(LoadedHead& loaded, const TemplateFiles& files = {}, const Progress& progress = {});

}  // namespace scalpmark::models
