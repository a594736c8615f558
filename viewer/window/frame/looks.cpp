#include "viewer/window/frame/looks.h"

#include <QApplication>
#include <QScreen>
#include <algorithm>

#include "viewer/window/frame/theme.h"

namespace scalpmark::window {

namespace {

constexpr double lesson_factor = 1.4;  // read from the back of a class room
/// On a wall capitals are 24 pixels high and more: letters of 14 pixels have capitals of 10.
constexpr double wall_factor = 2.5;

}  // namespace

Looks::Looks(Settings& settings, Menus& menus, Worksheet& worksheet, StageView& stage)
    : settings_(settings), worksheet_(worksheet), stage_(stage), menus_(menus) {
  connect(&menus, &Menus::unit, this, [this](LengthUnit unit) {
    emit unit_chosen(unit);
    settings_.unit = unit;
    settings_.write();
  });
  connect(&menus, &Menus::dark, this, [this](bool on) {
    settings_.dark = on;
    settings_.write();
    apply();
  });
  connect(&menus, &Menus::type_size, this, [this](TypeSize size) {
    settings_.type_size = size;
    settings_.write();
    apply();
  });
  connect(&menus, &Menus::animated, this, [this](bool on) {
    stage_.set_animated(on);
    settings_.animated = on;
    settings_.write();
  });
  connect(&menus, &Menus::projected, this, [this](bool on) {
    projected_ = on;
    emit changed();
  });
}

TypeSize type_size_of(const Settings& settings) {
  if (settings.type_size) return *settings.type_size;
  const QScreen* screen = QGuiApplication::primaryScreen();
  return screen ? usual_type_size(screen->logicalDotsPerInch()) : TypeSize::usual;
}

void Looks::scale_stage(bool lesson, bool on_wall) {
  if (on_wall)
    stage_.set_type_scale(wall_factor);
  else
    stage_.set_type_scale(lesson ? lesson_factor : 1, factor_of(type_size()));
}

void Looks::apply() {
  apply_theme(*qApp, settings_.dark, type_size());
  worksheet_.set_type_size(type_size());
  menus_.show_type_size(type_size());
  emit changed();
}

}  // namespace scalpmark::window
