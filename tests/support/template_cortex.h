#pragma once

#include "geometry/brain/cortex.h"
#include "models/brain/template_brain.h"
#include "tests/support/template_head.h"

namespace scalpmark::tests {

/// The template's files as scripts/reference-data leaves them; what is made of them is kept beside them.
inline models::TemplateFiles template_files() {
  return {reference_file(""), reference_file("cache")};
}

/// The template MRI head's own brain under it, read once.
inline const geometry::Cortex& template_cortex() {
  static const geometry::Cortex cortex(models::load_template_brain(template_files()).brain, template_head());
  return cortex;
}

}  // namespace scalpmark::tests
