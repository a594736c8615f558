#include <QApplication>
#include <QCheckBox>
#include <QImage>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "viewer/window/frame/theme.h"

using namespace scalpmark::window;

namespace {

double relative_luminance(const QColor& colour) {
  const auto linear = [](double c) { return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
  return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

double contrast(const QColor& a, const QColor& b) {
  const double one = relative_luminance(a), other = relative_luminance(b);
  return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

/// The most contrast that anything in the box has to what is around it.
double seen_by(const QCheckBox& box) {
  const QImage drawn = const_cast<QCheckBox&>(box).grab().toImage();
  const QColor ground = drawn.pixelColor(drawn.width() - 1, 0);
  double most = 1;
  for (int y = 0; y < drawn.height(); ++y)
    for (int x = 0; x < std::min(20, drawn.width()); ++x)
      most = std::max(most, contrast(ground, drawn.pixelColor(x, y)));
  return most;
}

int pixels_that_differ(const QImage& a, const QImage& b) {
  int differ = 0;
  for (int y = 0; y < a.height(); ++y)
    for (int x = 0; x < a.width(); ++x) differ += a.pixel(x, y) != b.pixel(x, y);
  return differ;
}

}  // namespace

TEST_CASE("a box to tick can be seen, ticked or not, in both themes and every size of letters") {
  for (const bool dark : {false, true})
    for (const TypeSize type : {TypeSize::usual, TypeSize::large, TypeSize::largest}) {
      apply_theme(*qApp, dark, type);
      QCheckBox box;
      box.resize(box.sizeHint());
      INFO("dark " << dark);
      // WCAG 2.1, success criterion 1.4.11: parts that must be seen have a contrast of 3 to 1.
      CHECK(seen_by(box) >= 3);
      const QImage empty = box.grab().toImage();
      box.setChecked(true);
      CHECK(seen_by(box) >= 3);
      CHECK(pixels_that_differ(empty, box.grab().toImage()) > 60);
      box.setEnabled(false);
      CHECK(pixels_that_differ(empty, box.grab().toImage()) > 8);  // still told from an empty one
    }
  apply_theme(*qApp, false, TypeSize::usual);
}
