#pragma once

#include <QString>
#include <string>

#include "tests/viewer/window/opened_window.h"

namespace scalpmark::window {

/// Every screen (every_screen.h) as a picture in FOLDER, in three sizes and both themes, and in settings off
/// the default: the other side, coil, rule, kind of head, unit and language. `only`: one of them, by its
/// name. Says whether no label stood over another's symbol.
bool tour_of_settings(const QString& folder, const std::string& only);

/// Prints what is wrong with the labels on the screen that is shown, and counts it.
void say_mistaken(MainWindow& w, const std::string& where);
[[nodiscard]] int mistaken_so_far();

}  // namespace scalpmark::window
