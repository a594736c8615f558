#pragma once

#include <Eigen/Core>
#include <array>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "geometry/coil/coil.h"
#include "geometry/head/fiducials.h"
#include "geometry/plan/plan.h"
#include "geometry/surface/surface.h"
#include "viewer/stage/scene/gaps_shown.h"
#include "viewer/stage/scene/mark.h"
#include "viewer/stage/scene/palette.h"
#include "viewer/stage/scene/shapes.h"
#include "viewer/stage/scene/shown.h"

namespace scalpmark::viewer {

// What is drawn, as values: places in the head's frame (mm), sizes in pixels of a picture 800 high, colours
// by what they stand for. What depends on who looks from where (what the head hides, where a label finds
// room) is the drawer's. `lift_mm`: how far toward the eye, so that the skin does not swallow it.

/// A short line square to another, lying on the skin.
struct Tick {
  Eigen::Vector3d at = Eigen::Vector3d::Zero(), across = Eigen::Vector3d::UnitX(),
                  normal = Eigen::Vector3d::UnitZ();
  double half_px = 3;
  std::optional<Label> label;
};

/// A line of even width facing the eye.
struct Line {
  std::vector<Eigen::Vector3d> points;
  double width_px = 1;
  Role role = Role::construction;
  double lift_mm = 0;
  bool dashed = false;  ///< from the first point straight to the last
  std::vector<Tick> ticks{};
  std::optional<Label> label{};            ///< stands at the line's highest point in the picture that is seen
  std::vector<Eigen::Vector3d> normals{};  ///< the skin's at each point; only with a label
  std::string name{};                      ///< of a tape, as in the plan
  bool keep_clear = false;                 ///< labels would rather stand beside it
};

/// A band of some width lying on the skin, and what is printed on it.
struct Ribbon {
  std::vector<Eigen::Vector3d> points;                ///< along its middle
  std::vector<Eigen::Vector3d> across;                ///< at each, unit, in the band
  double half_mm = 1;                                 ///< half its width
  std::vector<std::vector<Eigen::Vector3d>> print{};  ///< strokes, each a line on it
  Role role = Role::cloth, rim = Role::text;          ///< its ground; its edges and print
  double rim_px = 1, print_px = 1;
  double lift_mm = 0;
};

/// A round spot facing the eye.
struct Spot {
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  double radius_px = 1;
  Role role = Role::construction;
  double lift_mm = 0;
  std::optional<Eigen::Vector3d> normal{};  ///< the skin's, of a spot that is left out behind the head
  std::optional<Label> label{};             ///< only with a normal
  std::optional<Colour> tint{};             ///< in place of its role's
};

/// Where the coil touches: a wedge facing the eye, its tip on the place, left out behind the head.
struct Wedge {
  Eigen::Vector3d at = Eigen::Vector3d::Zero(), normal = Eigen::Vector3d::UnitZ();
  double lift_mm = 0;
  std::optional<Label> label{};
};
inline constexpr double wedge_height_px = 13, wedge_half_px = 6, wedge_halo_px = 1.6;

/// Words at a place on the skin, without a mark.
struct PlacedWords {
  Eigen::Vector3d at = Eigen::Vector3d::Zero(), normal = Eigen::Vector3d::UnitZ();
  Label label;
};

/// A corner of a surface, by its number.
struct LitCorner {
  int corner = 0;
  double share = 0;
};

/// A patch of a surface in another colour, fading toward its rim.
struct Glow {
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  double radius_mm = 10;
  Role role = Role::lit;
  /// In place of the radius: how much each of these corners of the surface is lit, 0 to 1.
  std::shared_ptr<const std::vector<LitCorner>> corners{};
};

/// Skin or cortex, matte: so much light from everywhere, so much from the eye. By reference: copies of a
/// surface share everything.
struct Body {
  geometry::Surface surface;
  Role role = Role::skin;
  double ambient = 0.4, diffuse = 0.6;
  double opacity = 1;
  std::optional<Glow> glow{};
};

/// The coil's casing and windings where it lies: parts of geometry::Coil, and the frame they are in.
struct CoilBody {
  geometry::Coil coil;
  Eigen::Vector3d origin = Eigen::Vector3d::Zero();
  Eigen::Vector3d right = Eigen::Vector3d::UnitX(), front = Eigen::Vector3d::UnitY(),
                  normal = Eigen::Vector3d::UnitZ();
  bool filled = true;  ///< only its outlines are drawn, where colours are to be read through it
  bool solid = false;  ///< nothing is seen through it, as of a real one
};
/// The rims of its parts' undersides and tops, each closed, in the head's frame.
[[nodiscard]] std::vector<std::vector<Eigen::Vector3d>> rims(const CoilBody& coil);

/// An area in one colour that lets something of what it lies on through, with a thin dark outline.
struct Tint {
  std::vector<std::array<Eigen::Vector3d, 3>> triangles;
  std::vector<std::array<Eigen::Vector3d, 2>> outline;  ///< pieces of it
  Role role = Role::lit;
  double opacity = 1;
  double outline_px = 1.5;
};

/// What lies under the skin and is seen through it, where it faces the eye.
struct SeenThrough {
  Eigen::Vector3d inside = Eigen::Vector3d::Zero();  ///< all of it faces away from there
  std::vector<Tint> tints;                           ///< the wider first
  std::vector<Line> lines;
};

/// One thing's part of the scene. Drawn in this order, where depth does not tell.
struct Part {
  Thing thing = Thing::skin;
  std::optional<Body> body{};
  std::optional<CoilBody> coil{};
  std::shared_ptr<const GapsShown> gaps{};
  std::optional<SeenThrough> through{};
  std::vector<Ribbon> ribbons{};
  std::vector<Spot> spots{};
  std::vector<Line> lines{};
  std::vector<Wedge> wedges{};
  std::vector<Mark> marks{};
  std::vector<PlacedWords> words{};
  bool pickable = true;  ///< others let the pointer through
};

/// A row of the legend.
struct LegendRow {
  enum class Sample { shape, line, coil, lit, field };
  Sample sample = Sample::shape;
  Shape shape = Shape::dot;
  Role role = Role::text;
  std::string text;
  int place = 0;     ///< rows of a lower one stand further up
  int windings = 2;  ///< of a coil
};

/// The numbers staff copy down, for the placement shown: angle, the coil's reach, and tape distances from the
/// four points that can be found again without a cap.
struct NumberTable {
  struct Row {
    std::string name, pulse, edge;
  };
  std::string where, angle, reach;
  std::vector<Row> rows;  ///< the first is their heading
};

/// What stands under the scale of gaps.
struct GapScale {
  struct Tick {
    double mm = 0;
    std::string text;  ///< in the unit of the title
  };
  struct Row {
    std::string text;
    bool strong = false;
  };
  std::string title, touches;
  std::vector<Row> rows;
  std::vector<Tick> ticks;
};

/// How something falls with depth: so many mm down, so much of what it is at the skin, 0 to 1.
struct DepthCurve {
  std::string title, depth;  ///< its own, and its axis'
  std::vector<Eigen::Vector2d> points;
};

/// A sentence or a heading under the numbers.
struct Remark {
  enum class Weight { plain, heading, quiet };
  std::string text;
  Weight weight = Weight::plain;
};

/// What stands around the head.
struct Surroundings {
  struct Title {
    std::string name, about;  ///< the way one looks is added to `about`
  };
  std::optional<Title> title;
  std::string headline;  ///< over the head, in large type; mostly none
  std::string caution;   ///< empty: it stands in print beside the picture
  double caution_share = 1;
  std::optional<NumberTable> numbers;
  std::vector<Remark> remarks;  ///< under the numbers
  std::vector<LegendRow> legend;
  std::optional<GapScale> gap_scale;
  std::optional<DepthCurve> depth_curve;
  bool with_column = false;  ///< room is kept for numbers and legend beside the head
};

/// All that is drawn.
struct Scene {
  geometry::Surface skin;  ///< what hides marks, shown or not
  geometry::HeadAxes axes;
  geometry::Placement placement;  ///< the coil's, for looking square on it
  std::vector<Part> parts{};
  Surroundings around{};
};

}  // namespace scalpmark::viewer
