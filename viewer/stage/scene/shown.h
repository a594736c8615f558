#pragma once

#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/answers/course.h"
#include "geometry/answers/visit_answers.h"
#include "geometry/field/coil_field.h"
#include "geometry/hands/cap_veil.h"
#include "geometry/hands/tolerance.h"
#include "geometry/hands/what_if.h"
#include "geometry/plan/plan.h"
#include "viewer/stage/scene/note.h"
#include "viewer/stage/scene/thing.h"

namespace scalpmark::viewer {

struct GapsShown;
struct PractiseShown;

/// Where the coil lies.
enum class CoilOn { start, spot, hotspot, treatment, elsewhere };

/// What Thing::cortex shows of the place under the coil.
enum class UnderCoil {
  said,     ///< lit, and said in words beside the numbers
  lit,      ///< lit only: what stands around the stage says whose brain it is not
  left_out  ///< the brain alone, with the words that it is the template's
};

/// A skin that lets this much of itself be seen shows the brain, and still looks like a head.
inline constexpr double skin_over_cortex = 0.35;

/// Tapes that are being laid: these, one after the other, as far as this share (0 to 1) of all their length.
struct Laying {
  std::set<std::string> lines;
  double share = 0;
};

/// A place that fits a mark's tapes, one of several, with what its tag says.
struct PlaceShown {
  Eigen::Vector3d at = Eigen::Vector3d::Zero();
  std::string tag;  ///< "A"
};

/// A course of visits as it is drawn.
struct CourseShown {
  struct At {
    Eigen::Vector3d pulse = Eigen::Vector3d::Zero();
    std::size_t visit = 0;  ///< from 1
    bool outside = false;   ///< beyond a limit of its stretch
  };
  std::vector<At> visits;                            ///< those whose marks are known, in order
  std::optional<geometry::CourseEllipses> ellipses;  ///< of the last stretch
};
[[nodiscard]] CourseShown course_shown(const geometry::CheckedCourse& checked, const geometry::Head& head,
                                       const geometry::Plan& plan);

/// What to show of a plan.
struct Shown {
  std::set<Thing> things{Thing::skin,    Thing::landmarks, Thing::tapes,  Thing::grid,    Thing::start,
                         Thing::hotspot, Thing::treatment, Thing::coil,   Thing::angle,   Thing::edge_marks,
                         Thing::wanted,  Thing::labels,    Thing::legend, Thing::numbers, Thing::title};
  // What of them; empty: all.
  std::optional<std::set<std::string>> landmarks, lines;  ///< of the plan's, by name; tragi are always shown
  std::optional<geometry::MarkRule> only_rule;            ///< the one edge mark of the coil's that is shown
  std::optional<Laying> laying;                           ///< empty: all lines lie in their whole length
  /// False: marks of other rules and other sites stand there without their labels, so that what a step is
  /// about can be read; `named_site` is one of the plan's alternatives that has its label all the same.
  bool names_all = true;
  bool brief = false;  ///< labels of site and edge mark name them and say no more: it stands in print beside
  std::optional<std::size_t> named_site;
  /// In place of the plan's landmarks: those of another system.
  std::shared_ptr<const std::vector<geometry::Landmark>> other_landmarks;

  CoilOn coil_on = CoilOn::treatment;
  int row = 0, column = 0;                       ///< for CoilOn::spot
  std::optional<geometry::Placement> placement;  ///< for CoilOn::elsewhere: while the coil is dragged
  bool in_hand = false;  ///< `placement` is where a hand tries the coil, not the plan's
  std::shared_ptr<const geometry::Tolerance> tolerance;  ///< for Thing::tolerance
  std::shared_ptr<const geometry::CapVeil> cap;          ///< for Thing::cap
  /// For Thing::way_marks: the way to mark of which they are; empty: the best that `tolerance` found.
  std::optional<geometry::MarkingWay> marking_way;
  std::optional<geometry::LineOfSight> sight;      ///< for Thing::sight
  std::shared_ptr<const GapsShown> gaps;           ///< for Thing::gaps: of the placement the coil lies on
  std::shared_ptr<const geometry::Cortex> cortex;  ///< for Thing::cortex
  /// For Thing::field, and for a cortex that is lit by it: of the placement the coil lies on.
  std::shared_ptr<const geometry::CoilField> field;
  std::vector<PlaceShown> places;                         ///< for Thing::places
  std::shared_ptr<const geometry::VisitAnswers> answers;  ///< for Thing::answers
  std::shared_ptr<const CourseShown> course;              ///< for Thing::course
  /// What hands have laid and drawn in an exercise; the coil is a real one then, which nobody sees through.
  std::shared_ptr<const PractiseShown> practise;
  std::vector<Note> notes;  ///< besides all things
  UnderCoil under_coil = UnderCoil::said;
  /// "generic head, scaled to the tapes": under the title, or before the caution where there is none.
  std::string head_description;
  double skin_opacity = 1;   ///< 0 to 1
  double caution_share = 1;  ///< how large the caution's letters are beside others of the usual size
  bool caution = true;       ///< left out only where it stands in print beside the picture

  [[nodiscard]] bool has(Thing thing) const { return things.contains(thing); }
  [[nodiscard]] bool has_landmark(const std::string& name) const {
    return !landmarks || landmarks->contains(name);
  }
  [[nodiscard]] bool has_line(const std::string& name) const { return !lines || lines->contains(name); }
  [[nodiscard]] bool has_mark(geometry::MarkRule rule) const { return !only_rule || *only_rule == rule; }
};

/// The placement the coil lies on. Refuses (ViewerError) a spot the plan does not have.
[[nodiscard]] const geometry::Placement& placement_shown(const geometry::Plan& plan, const Shown& shown);

/// "on the treatment site", for captions.
[[nodiscard]] std::string where_shown(const Shown& shown);

}  // namespace scalpmark::viewer
