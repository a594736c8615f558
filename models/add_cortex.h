#pragma once

#include "models/load_head.h"
#include "models/template_brain.h"

namespace scalpmark::models {

/// Brings the template's brain under a loaded head (geometry::Cortex). Where it cannot, the head stays
/// without and a note says why and what to install; a note also says how far the brain had to be pushed in.
void add_cortex(LoadedHead& loaded, const TemplateFiles& files = {}, const Progress& progress = {});

}  // namespace scalpmark::models
