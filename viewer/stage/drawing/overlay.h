#pragma once

#include <vtkActor2D.h>
#include <vtkNew.h>
#include <vtkPolyData.h>
#include <vtkPolyDataMapper2D.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>
#include <vtkTextActor.h>
#include <vtkTextProperty.h>

#include <Eigen/Core>
#include <map>
#include <string>
#include <tuple>
#include <vector>

#include "viewer/stage/drawing/label.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/stage/scene/shapes.h"
#include "viewer/stage/scene/sight.h"

namespace scalpmark::viewer {

struct TextStyle {
  double size_px = 14;  ///< in a picture 800 high
  bool bold = false;
  Colour colour = palette::text;
  bool backed = false;  ///< on a white ground that lets little through

  friend bool operator==(const TextStyle& a, const TextStyle& b) = default;
};

/// Gives type of VTK's own the same look, in a picture so many times as large as one 800 high.
void set_type(vtkTextProperty* look, const TextStyle& style, double scale);

struct TextSize {
  double width = 0, height = 0;
};

/// What is drawn flat over the scene: text, leader lines, the legend's shapes. Pixels, y down. Filled anew
/// for each view; text that stays the same is not set again, wherever it stands.
class Overlay {
public:
  explicit Overlay(vtkRenderer* renderer);

  void begin(const Sight& sight);
  [[nodiscard]] TextSize measure(const std::string& text, const TextStyle& style);
  /// The text with its top left corner at a place. Control characters are drawn as spaces.
  void text(const std::string& text, const Pixel& top_left, const TextStyle& style);
  void line(const Pixel& from, const Pixel& to, double width_px, Colour colour);
  void box(const Box& box, Colour colour, double opacity);
  void ellipse(const Pixel& centre, double half_width, double half_height, Colour colour, double opacity);
  void shape(Shape shape, const Pixel& centre, Colour colour);
  /// As where a coil touches; its tip at a place.
  void wedge(const Pixel& tip, Colour colour);
  void done();

  [[nodiscard]] double scale() const { return sight_.scale; }

private:
  /// A text as it is wanted in this view.
  struct Wanted {
    std::string text;
    TextStyle style;
    double left = 0, bottom = 0;  ///< from the picture's lower left corner
  };
  /// What draws one, and what it was set to last.
  struct SetText {
    vtkSmartPointer<vtkTextActor> actor;
    std::string text;
    TextStyle style;
    double scale = 0;
    bool in_use = false;
  };
  [[nodiscard]] SetText& free_text();
  void set_texts();
  void triangle(const Eigen::Vector2d& a, const Eigen::Vector2d& b, const Eigen::Vector2d& c, Colour colour,
                double opacity);

  Sight sight_;
  vtkRenderer* renderer_;
  std::vector<float> points_;
  std::vector<unsigned char> colours_;
  vtkNew<vtkPolyData> data_;
  vtkNew<vtkPolyDataMapper2D> mapper_;
  vtkNew<vtkActor2D> actor_;
  std::vector<Wanted> wanted_;
  std::vector<SetText> texts_;
  // By text, pixels, boldness and ground, which adds a margin.
  std::map<std::tuple<std::string, int, bool, bool>, TextSize> measured_;
};

}  // namespace scalpmark::viewer
