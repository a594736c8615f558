#pragma once

#include <functional>

#include "tests/viewer/window/opened_window.h"

namespace scalpmark::window {

/// Goes to every step of the worksheet, every mode, every step of the lesson and everything that can go wrong
/// in it, one and two things at once, the induced field and the brain, and projected; `look` is called on
/// each with its name.
void every_screen(OpenedWindow& opened, const std::function<void(const std::string&)>& look);

/// What is wrong with the stage's labels on the screen that is shown: one over another's symbol or words, or
/// over what is written around the head. Empty where nothing is.
[[nodiscard]] std::string mistaken_texts(MainWindow& w);

}  // namespace scalpmark::window
