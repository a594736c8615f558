#include "viewer/stage/drawing/overlay.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkIdTypeArray.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkProperty2D.h>
#include <vtkTextProperty.h>
#include <vtkTextRenderer.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>
#include <cmath>
#include <filesystem>

#include "geometry/base/angles.h"
#include "viewer/stage/drawing/triangles.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

namespace {

/// A font with wide coverage (Debian package fonts-dejavu-core); without it VTK's own is used.
const std::string& font_file(bool bold) {
  static const auto found = [](const char* name) {
    std::string file = std::string("/usr/share/fonts/truetype/dejavu/") + name;
    std::error_code error;
    return std::filesystem::is_regular_file(file, error) ? file : std::string();
  };
  static const std::string plain = found("DejaVuSans.ttf"), strong = found("DejaVuSans-Bold.ttf");
  return bold ? strong : plain;
}

int font_px(const TextStyle& style, double scale) {
  return static_cast<int>(std::lround(style.size_px * scale));
}

}  // namespace

void set_type(vtkTextProperty* look, const TextStyle& style, double scale) {
  const std::string& font = font_file(style.bold);
  if (font.empty()) {
    look->SetFontFamilyToArial();
    look->SetBold(style.bold);
  } else {
    look->SetFontFamily(VTK_FONT_FILE);
    look->SetFontFile(font.c_str());
  }
  look->SetFontSize(font_px(style, scale));
  look->SetColor(style.colour.red / 255.0, style.colour.green / 255.0, style.colour.blue / 255.0);
  look->SetBackgroundColor(1, 1, 1);
  look->SetBackgroundOpacity(style.backed ? 0.82 : 0);
}

namespace {

void set_style(vtkTextProperty* look, const TextStyle& style, double scale) {
  set_type(look, style, scale);
  look->SetJustificationToLeft();
  look->SetVerticalJustificationToBottom();
}

/// One line, and no `$` pairs, which VTK would take for formulas.
std::string drawable(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f)
      out += ' ';
    else if (c == '$')
      out += "\uff04";
    else
      out += c;
  }
  return out;
}

constexpr int dots_per_inch = 72;  // so that a font size is in pixels

}  // namespace

Overlay::Overlay(vtkRenderer* renderer) : renderer_(renderer) {
  mapper_->SetInputData(data_);
  mapper_->ScalarVisibilityOn();
  actor_->SetMapper(mapper_);
  actor_->GetPositionCoordinate()->SetCoordinateSystemToViewport();
  actor_->SetPosition(0, 0);
  actor_->SetPickable(false);
  renderer_->AddViewProp(actor_);
}

void Overlay::begin(const Sight& sight) {
  sight_ = sight;
  points_.clear();
  colours_.clear();
  wanted_.clear();
}

TextSize Overlay::measure(const std::string& text, const TextStyle& style) {
  // The same words are measured for every picture of a movement, and setting them takes longer than drawing.
  constexpr size_t most_kept = 2000;
  const std::tuple key(text, font_px(style, sight_.scale), style.bold, style.backed);
  if (const auto known = measured_.find(key); known != measured_.end()) return known->second;
  if (measured_.size() >= most_kept) measured_.clear();
  vtkNew<vtkTextProperty> look;
  set_style(look, style, sight_.scale);
  int box[4] = {0, -1, 0, -1};
  vtkTextRenderer::GetInstance()->GetBoundingBox(look, drawable(text), box, dots_per_inch);
  const TextSize size{static_cast<double>(std::max(0, box[1] - box[0] + 1)),
                      static_cast<double>(std::max(0, box[3] - box[2] + 1))};
  measured_.emplace(key, size);
  return size;
}

void Overlay::text(const std::string& text, const Pixel& top_left, const TextStyle& style) {
  const double height = measure(text, style).height;
  wanted_.push_back(
      {text, style, std::round(top_left.x), std::round(sight_.height_px - top_left.y - height)});
}

void Overlay::triangle(const Eigen::Vector2d& a, const Eigen::Vector2d& b, const Eigen::Vector2d& c,
                       Colour colour, double opacity) {
  for (const auto* p : {&a, &b, &c}) {
    points_.insert(points_.end(),
                   {static_cast<float>(p->x()), static_cast<float>(sight_.height_px - p->y()), 0.0F});
    colours_.insert(colours_.end(), {colour.red, colour.green, colour.blue,
                                     static_cast<unsigned char>(std::lround(255 * opacity))});
  }
}

void Overlay::line(const Pixel& from, const Pixel& to, double width_px, Colour colour) {
  const Eigen::Vector2d a(from.x, from.y), b(to.x, to.y);
  if ((b - a).norm() < 1e-9) return;
  const Eigen::Vector2d way = (b - a).normalized();
  const Eigen::Vector2d side = 0.5 * width_px * sight_.scale * Eigen::Vector2d(-way.y(), way.x());
  triangle(a - side, b - side, b + side, colour, 1);
  triangle(a - side, b + side, a + side, colour, 1);
}

void Overlay::box(const Box& box, Colour colour, double opacity) {
  const Eigen::Vector2d tl(box.left, box.top), tr(box.right, box.top), bl(box.left, box.bottom),
      br(box.right, box.bottom);
  triangle(tl, bl, br, colour, opacity);
  triangle(tl, br, tr, colour, opacity);
}

void Overlay::ellipse(const Pixel& centre, double half_width, double half_height, Colour colour,
                      double opacity) {
  constexpr int corners = 24;
  const Eigen::Vector2d middle(centre.x, centre.y);
  const auto rim = [&](int i) -> Eigen::Vector2d {
    const double a = 2 * geometry::pi * i / corners;
    return middle + Eigen::Vector2d(half_width * std::cos(a), half_height * std::sin(a));
  };
  for (int i = 0; i < corners; ++i) triangle(middle, rim(i), rim(i + 1), colour, opacity);
}

void Overlay::shape(Shape shape, const Pixel& centre, Colour colour) {
  const auto flat = triangles_px(shape);
  const auto corner = [&](const Eigen::Vector2d& p) {
    return Eigen::Vector2d(centre.x + sight_.scale * p.x(), centre.y - sight_.scale * p.y());
  };
  for (size_t i = 0; i + 2 < flat.size(); i += 3)
    triangle(corner(flat[i]), corner(flat[i + 1]), corner(flat[i + 2]), colour, 1);
}

void Overlay::wedge(const Pixel& tip, Colour colour) {
  const double s = sight_.scale;
  triangle({tip.x, tip.y}, {tip.x + wedge_half_px * s, tip.y - wedge_height_px * s},
           {tip.x - wedge_half_px * s, tip.y - wedge_height_px * s}, colour, 1);
}

Overlay::SetText& Overlay::free_text() {
  for (SetText& set : texts_)
    if (!set.in_use) return set;
  auto& fresh = texts_.emplace_back();
  fresh.actor = vtkSmartPointer<vtkTextActor>::New();
  fresh.actor->SetTextScaleModeToNone();
  fresh.actor->GetPositionCoordinate()->SetCoordinateSystemToViewport();
  fresh.actor->SetPickable(false);
  renderer_->AddViewProp(fresh.actor);
  return fresh;
}

// Setting a text takes longer than drawing it, and most are the same from one picture to the next: those keep
// what draws them, and only then the others take what is left over.
void Overlay::set_texts() {
  for (SetText& set : texts_) set.in_use = false;
  const auto place = [](SetText& set, const Wanted& wanted) {
    set.actor->SetPosition(wanted.left, wanted.bottom);
    set.actor->VisibilityOn();
    set.in_use = true;
  };
  std::vector<const Wanted*> others;
  for (const Wanted& wanted : wanted_) {
    const auto same = std::find_if(texts_.begin(), texts_.end(), [&](const SetText& set) {
      return !set.in_use && set.scale == sight_.scale && set.text == wanted.text && set.style == wanted.style;
    });
    if (same == texts_.end())
      others.push_back(&wanted);
    else
      place(*same, wanted);
  }
  for (const Wanted* wanted : others) {
    SetText& set = free_text();
    set.text = wanted->text;
    set.style = wanted->style;
    set.scale = sight_.scale;
    set.actor->SetInput(drawable(set.text).c_str());
    set_style(set.actor->GetTextProperty(), set.style, set.scale);
    place(set, *wanted);
  }
  for (SetText& set : texts_)
    if (!set.in_use) set.actor->VisibilityOff();
}

void Overlay::done() {
  set_texts();
  set_triangles(*data_, points_, colours_, 4);
}

}  // namespace scalpmark::viewer
