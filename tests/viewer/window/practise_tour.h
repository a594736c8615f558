#pragma once

#include <QString>

namespace scalpmark::window {

/// Saves the screens of an exercise: how it is chosen, each task as it is done by hand (a little wrong), the
/// score with its replay, a class. On the left and the right side, at all sizes.
void tour_of_practise(const QString& folder);

}  // namespace scalpmark::window
