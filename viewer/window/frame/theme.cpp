#include "viewer/window/frame/theme.h"

#include <QPalette>
#include <QRegularExpression>
#include <QStyleFactory>
#include <cmath>

// Of a static library they are loaded by hand, outside of any namespace.
static void load_pictures() {
  Q_INIT_RESOURCE(pictures);
}

namespace scalpmark::window {

namespace {

struct Colours {
  const char *ground, *page, *step, *line, *text, *quiet, *field, *accent, *on_accent, *problem, *note, *good;
};
// Text on its ground keeps a contrast of at least 4.5 to 1 in both.
constexpr Colours light{"#e9e8e4", "#f1f0ec", "#fbfaf8", "#cfcdc6", "#1d1e21", "#5a5b60",
                        "#ffffff", "#0b5f96", "#ffffff", "#9c3600", "#5a4a00", "#00664a"};
constexpr Colours dim{"#202225", "#26282c", "#2f3237", "#484c53", "#eceae6", "#b3b2ae",
                      "#1a1c1f", "#6db7e6", "#10151a", "#ff9e66", "#e8d27a", "#5ccfa9"};

// Names in capitals stand for colours.
constexpr char style_sheet[] = R"(
    QWidget { font-size: 14px; }
    QScrollArea#worksheet, QWidget#page { background: PAGE; border: none; }
    QFrame#step { background: STEP; border: 1px solid LINE; border-radius: 6px; }
    QFrame#step[current="true"] { border: 2px solid ACCENT; }
    QFrame#step QLabel, QFrame#step QRadioButton, QFrame#step QCheckBox { background: transparent; }
    QPushButton#heading { text-align: left; border: 2px solid transparent; border-radius: 5px; padding: 8px 10px;
      font-size: 15px; font-weight: 600; background: transparent; }
    QPushButton#heading:hover { background: PAGE; }
    QPushButton#heading:focus { border-color: ACCENT; padding: 8px 10px; }
    QPushButton#heading:pressed { background: PAGE; color: TEXT; }
    QLabel#hint { color: QUIET; }
    QLabel#quiet { color: QUIET; }
    QLabel#strong { font-weight: 600; }
    QLabel#note { color: NOTE; }
    QLabel#problem { color: PROBLEM; }
    QLabel#verdict { padding: 8px; border-left: 4px dotted ACCENT; }
    QLabel#verdict[verdict="agrees"] { border-left: 4px solid ACCENT; }
    QLabel#verdict[verdict="move"] { border-left: 4px dashed ACCENT; }
    QCheckBox::indicator { width: 14px; height: 14px; border: 1px solid QUIET; border-radius: 3px; background: FIELD; }
    QCheckBox::indicator:checked { border-color: ACCENT; background: ACCENT; image: url(TICK); }
    QLineEdit { border: 1px solid LINE; border-radius: 4px; padding: 4px 6px; background: FIELD; }
    QLineEdit:focus { border: 2px solid ACCENT; padding: 3px 5px; }
    QLineEdit[bad="true"] { border: 2px solid PROBLEM; padding: 3px 5px; }
    QPushButton { border: 1px solid LINE; border-radius: 4px; padding: 5px 10px; background: FIELD; }
    QPushButton:hover { border-color: ACCENT; }
    QPushButton:focus { border: 2px solid ACCENT; padding: 4px 9px; }
    QPushButton:pressed, QPushButton:checked { background: ACCENT; color: ONACC; border-color: ACCENT; }
    QPushButton:checked:focus { border: 2px solid TEXT; }
    QPushButton:disabled { color: QUIET; background: PAGE; }
    QPushButton#spot { padding: 0; border-radius: 17px; }
    QPushButton#pulsespot { padding: 0; font-size: 15px; font-weight: 600; }
    QPushButton#answer { font-size: 18px; font-weight: 600; padding: 2px 4px; }
    QLabel#digits { font-size: 64px; font-weight: 700; }
    QListWidget#pulses { background: FIELD; border: 1px solid LINE; border-radius: 4px; }
    QListWidget#pulses:focus { border: 2px solid ACCENT; }
    QPushButton#main { background: ACCENT; color: ONACC; border-color: ACCENT; font-weight: 600; }
    QPushButton#main:disabled { background: PAGE; color: QUIET; border-color: LINE; }
    QPushButton#mode { font-size: 15px; padding: 6px 16px; }
    QPushButton#mode:focus { padding: 5px 15px; }
    QWidget#topBar[tight="true"] QPushButton#mode { padding: 6px; }
    QWidget#topBar[tight="true"] QPushButton#mode:focus { padding: 5px; }
    QTableWidget { background: FIELD; border: 1px solid LINE; border-radius: 4px; }
    QTableWidget:focus { border: 2px solid ACCENT; }
    QRadioButton::indicator { width: 14px; height: 14px; border: 1px solid QUIET; border-radius: 8px; background: FIELD; }
    QRadioButton::indicator:checked { width: 6px; height: 6px; border: 5px solid ACCENT; border-radius: 8px; }
    QRadioButton:focus { color: ACCENT; text-decoration: underline; }
    QCheckBox:focus { color: ACCENT; text-decoration: underline; }
    QWidget#topBar, QWidget#foot { background: GROUND; }
    QWidget#startPage { background: PAGE; }
    QLabel#acrossTheRoom { font-size: 160px; font-weight: 700; }
    QLabel#status { font-size: 15px; font-weight: 600; }
    QLabel#provisional { font-size: 15px; font-weight: 700; color: PROBLEM; }
    QLabel#caution { color: QUIET; font-size: 12px; }
    QWidget#notice { background: STEP; border-bottom: 2px solid PROBLEM; }
    QWidget#notice[done="true"] { border-bottom: 2px solid GOOD; }
    QWidget#workBar { background: STEP; border-bottom: 2px solid ACCENT; }
    QWidget#coursePanel { background: STEP; border-top: 4px solid ACCENT; }
    QWidget#coursePanel QLabel { background: transparent; }
    QWidget#verdictPanel { background: STEP; border-top: 4px solid LINE; }
    QWidget#verdictPanel[verdict="agrees"] { border-top: 6px solid ACCENT; }
    QWidget#verdictPanel[verdict="move"] { border-top: 6px dashed ACCENT; }
    QWidget#verdictPanel[verdict="unsure"] { border-top: 6px dotted ACCENT; }
    QLabel#huge { font-size: 34px; font-weight: 700; }
    QLabel#large { font-size: 24px; font-weight: 600; }
    QLabel#larger { font-size: 18px; }
    QLabel#explainHeading { font-size: 18px; color: QUIET; }
    QLabel#explain { font-size: 26px; }
    QRadioButton#whatIf { font-size: 16px; }
    QLabel#cardHeading { font-size: 15px; font-weight: 600; }
    QListWidget#lessonSteps { background: FIELD; border: 1px solid LINE; border-radius: 4px; font-size: 17px; }
    QListWidget#lessonSteps:focus { border: 2px solid ACCENT; }
    QListWidget#lessonSteps::item { border: 1px solid transparent; padding: 2px 5px; }
    QListWidget#lessonSteps::item:selected { background: ACCENT; color: ONACC; }
    QWidget#lessonBar { background: STEP; border-top: 4px solid ACCENT; }
    QWidget#lessonBar QLabel { background: transparent; }
    QLabel#lessonProgress { color: QUIET; }
    QPushButton#lessonButton { font-size: 17px; padding: 7px 18px; }
    QPushButton#lessonButton:focus { padding: 6px 17px; }
  )";

/// Letters larger by that; lines and margins stay.
QString scaled(const QString& sheet, double factor) {
  static const QRegularExpression size(QStringLiteral("font-size: (\\d+)px"));
  QString out;
  int from = 0;
  for (auto found = size.globalMatch(sheet); found.hasNext();) {
    const QRegularExpressionMatch match = found.next();
    out += sheet.mid(from, match.capturedStart() - from) +
           QStringLiteral("font-size: %1px").arg(std::lround(factor * match.captured(1).toInt()));
    from = match.capturedEnd();
  }
  return out + sheet.mid(from);
}

QString sheet_of(const Colours& c, bool dark, TypeSize type) {
  QString sheet = QString::fromLatin1(style_sheet);
  const std::pair<const char*, const char*> names[]{
      {"TICK", dark ? ":/window/tick_dark.xpm" : ":/window/tick_light.xpm"},
      {"ONACC", c.on_accent},
      {"GROUND", c.ground},
      {"PAGE", c.page},
      {"STEP", c.step},
      {"LINE", c.line},
      {"QUIET", c.quiet},
      {"FIELD", c.field},
      {"ACCENT", c.accent},
      {"PROBLEM", c.problem},
      {"NOTE", c.note},
      {"GOOD", c.good},
      {"TEXT", c.text}};
  for (const auto& [name, colour] : names) sheet.replace(QLatin1String(name), QLatin1String(colour));
  return scaled(sheet, factor_of(type));
}

}  // namespace

void apply_theme(QApplication& app, bool dark, TypeSize type) {
  load_pictures();
  const Colours& c = dark ? dim : light;
  const QString sheet = sheet_of(c, dark, type);
  if (app.styleSheet() == sheet) return;  // or Qt styles every widget there is anew
  app.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  QPalette p;
  const auto set = [&](QPalette::ColorRole role, const char* colour) {
    p.setColor(role, QColor(QLatin1String(colour)));
  };
  set(QPalette::Window, c.ground);
  set(QPalette::WindowText, c.text);
  set(QPalette::Base, c.field);
  set(QPalette::AlternateBase, c.step);
  set(QPalette::Text, c.text);
  set(QPalette::Button, c.step);
  set(QPalette::ButtonText, c.text);
  set(QPalette::ToolTipBase, c.step);
  set(QPalette::ToolTipText, c.text);
  set(QPalette::Highlight, c.accent);
  set(QPalette::HighlightedText, c.on_accent);
  set(QPalette::PlaceholderText, c.quiet);
  set(QPalette::Link, c.accent);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    p.setColor(QPalette::Disabled, role, QColor(QLatin1String(c.quiet)));
  app.setPalette(p);
  app.setStyleSheet(sheet);
}

}  // namespace scalpmark::window
