#pragma once

#include <QWidget>
#include <optional>

#include "viewer/page/face.h"

namespace scalpmark::window {

/// What a page for a browser is to be.
struct PageChoice {
  viewer::Face face = viewer::Face::technician;
  viewer::PageHead head = viewer::PageHead::generic;
};

/// Asks whom a page is for, with `face` chosen at first, and, where it would show a person's face, which head
/// it is to have. Nothing: no page.
[[nodiscard]] std::optional<PageChoice> ask_about_page(QWidget* parent, viewer::Face face,
                                                       bool shows_a_person);

}  // namespace scalpmark::window
