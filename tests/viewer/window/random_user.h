#pragma once

#include <QPushButton>
#include <QTimer>
#include <random>
#include <string>

#include "tests/viewer/window/opened_window.h"

namespace scalpmark::window {

/// Somebody who does anything at all in the window, by real events, in an order that a seed decides: types
/// into fields, presses buttons, drags and turns coil and head, undoes and redoes, changes steps and modes.
/// Opens no dialog and writes no file.
class RandomUser {
public:
  RandomUser(OpenedWindow& opened, unsigned seed);

  /// Does one thing; returns what, so that a failure can be told.
  std::string act();

private:
  [[nodiscard]] int any(int below) { return static_cast<int>(random_() % static_cast<unsigned>(below)); }
  std::string type_somewhere();
  std::string press_something();
  std::string drag_somewhere();
  std::string press_a_key();
  template <typename Widget>
  Widget* anything_in_sight();

  OpenedWindow& opened_;
  std::mt19937 random_;
  QTimer closes_dialogs_;
};

/// What is wrong with the state of the window; empty where nothing is. The plan in force must be what solve()
/// makes of the case in force, and what is on the stage and in the fields must be of both.
[[nodiscard]] std::string wrong_state(MainWindow& w);

}  // namespace scalpmark::window
