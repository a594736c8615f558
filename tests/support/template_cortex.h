#pragma once

#include "geometry/head/head.h"
#include "models/brain/template_brain.h"
#include "tests/support/template_head.h"

namespace scalpmark::tests {

/// The template's files as scripts/reference-data leaves them; what is made of them is kept beside them.
inline models::TemplateFiles template_files() {
  return {reference_file(""), reference_file("cache")};
}

/// The template MRI head with its own brain, read once.
inline const geometry::Head& template_head_with_cortex() {
  static const geometry::Head head = template_head().with_cortex(std::make_shared<const geometry::Cortex>(
      models::load_template_brain(template_files()).brain, template_head()));
  return head;
}

}  // namespace scalpmark::tests
