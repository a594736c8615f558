#pragma once

#include <QString>
#include <string>

namespace scalpmark::window {

/// Saves the screens of an exercise: how it is chosen, each task as it is done by hand (a little wrong), the
/// score with its replay, a class. On the left and the right side, at all sizes; in German, in inches, dark,
/// and on a scanned head. `only`: one of these, by its name.
void tour_of_practise(const QString& folder, const std::string& only = {});

}  // namespace scalpmark::window
