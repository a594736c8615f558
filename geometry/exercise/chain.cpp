#include "geometry/exercise/chain.h"

#include <algorithm>
#include <array>
#include <map>

#include "geometry/base/error.h"
#include "geometry/exercise/lost_mark.h"
#include "geometry/head/landmarks.h"
#include "geometry/head/on_head.h"
#include "geometry/head/vertex.h"
#include "geometry/plan/edge_marks.h"
#include "geometry/plan/lay_on_marks.h"
#include "geometry/plan/placement.h"
#include "geometry/plan/search.h"
#include "geometry/plan/treatment.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

namespace {

/// How closely the vertex of marked points halves their tapes, mm.
constexpr double felt_settled_mm = 1e-4;

/// A step whose answer cannot be had, because of what came before.
struct NoAnswer {};

}  // namespace

struct Chain::Parts {
  const RightAnswers& answers;
  Side side;
  std::map<Step, Placed> taken;
  std::map<Step, std::optional<Placed>> known;  ///< what steps ought to be, as far as asked
  std::optional<Head> felt;                     ///< the head as the marked points make it

  [[nodiscard]] const Surface& skin() const { return answers.head.skin(); }
  [[nodiscard]] Placed at(const SurfacePoint& point) const {
    Placed placed;
    placed.at = skin().position(point);
    return placed;
  }

  [[nodiscard]] const Placed& right(const Step& step) const { return answers.right.at(step); }

  /// Whether someone else has done it: it stood on the head for a later task.
  [[nodiscard]] bool is_given(Task task) const {
    if (has_task(answers.exercise, task)) return false;
    if (task == Task::four_points) return true;
    if (task == Task::vertex && has_task(answers.exercise, Task::find_again)) return true;
    return std::any_of(answers.exercise.tasks.begin(), answers.exercise.tasks.end(),
                       [task](Task later) { return later > task && leads_to_pulse(later); });
  }

  [[nodiscard]] std::optional<Placed> stands(const Step& step) {
    if (is_given(step.task)) return right(step);
    if (const auto found = taken.find(step); found != taken.end()) return found->second;
    return should_be(step);
  }
  /// The skin point of a mark that later steps go by.
  [[nodiscard]] SurfacePoint mark(const Step& step) {
    const std::optional<Placed> placed = stands(step);
    if (!placed || !placed->at) throw NoAnswer{};
    return skin().closest(*placed->at);
  }
  /// Whether it was put down just where it is right, so that nothing is to be worked out anew.
  [[nodiscard]] bool is_right(const Step& step) {
    constexpr double alike_mm = 1e-6;  // rounding alone
    const std::optional<Placed> placed = stands(step);
    return placed && placed->at && (*placed->at - *right(step).at).norm() < alike_mm;
  }

  [[nodiscard]] const Head& head() {
    if (felt) return *felt;
    bool all_right = true;
    for (const Step& step : steps_of(Task::four_points)) all_right = all_right && is_right(step);
    if (all_right) return felt.emplace(answers.head);
    SkinFiducials points;
    const std::array places{&points.nasion, &points.inion, &points.left_tragus, &points.right_tragus};
    for (const Step& step : steps_of(Task::four_points))
      *places[static_cast<size_t>(step.which)] = mark(step);
    return felt.emplace(skin(), points, answers.head.vertex(), felt_settled_mm);
  }

  [[nodiscard]] std::optional<Placed> should_be(const Step& step) {
    if (is_given(step.task)) return right(step);
    if (const auto found = known.find(step); found != known.end()) return found->second;
    std::optional<Placed> found;
    try {
      found = worked_out(step);
    } catch (const GeometryError&) {
    } catch (const NoAnswer&) {
    }
    known[step] = found;
    return found;
  }

  [[nodiscard]] Placed worked_out(const Step& step) {
    switch (step.task) {
      case Task::four_points:
      case Task::coil_on_given_marks:
        return right(step);
      case Task::three_tapes:
        return tape(step);
      case Task::vertex:
        return at(head().vertex());
      case Task::start:
        return at(start());
      case Task::grid:
        return at(spot(spot_of(step)));
      case Task::hotspot:
        return at(hotspot());
      case Task::site:
        return at(site());
      case Task::edge_mark:
        return at(edge());
      case Task::coil:
        return coil();
      case Task::find_again:
        return at(found_again());
    }
    throw NoAnswer{};
  }

  [[nodiscard]] Placed tape(const Step& step) {
    const TapeMeasures& tapes = head().tapes();
    Placed placed;
    placed.reading_mm = step.which == 0   ? tapes.nasion_inion_mm
                        : step.which == 1 ? tapes.tragus_tragus_mm
                                          : tapes.circumference_mm;
    return placed;
  }

  /// The long tapes laid over the vertex as it was marked.
  [[nodiscard]] VertexTapes tapes_over_vertex() {
    const SurfacePoint vertex = mark({Task::vertex, 0});
    const SkinFiducials& f = head().fiducials();
    return {vertex, Tape::over(skin(), f.nasion, vertex, f.inion),
            Tape::over(skin(), f.left_tragus, vertex, f.right_tragus)};
  }

  [[nodiscard]] SurfacePoint start() {
    const Tape coronal = tapes_over_vertex().coronal;
    const double vertex_mm =
        coronal.fraction_of(skin().position(mark({Task::vertex, 0}))) * coronal.length_mm();
    const SearchSettings& search = answers.the_case.search;
    return measure_start(head(), coronal, vertex_mm, answers.the_case.side, search.lateral_mm,
                         search.anterior_mm)
        .anterior.at(1)
        .on_skin;
  }

  /// The middle is measured from the start, the others from the middle.
  [[nodiscard]] SurfacePoint spot(const GridPosition& spot) {
    const Case& c = answers.the_case;
    if (spot == GridPosition{}) {
      if (c.search.grid_on == GridOn::pulse_points) return mark({Task::start, 0});
      const SurfacePoint start = mark({Task::start, 0});
      const auto edge = mark_of(head(), c.coil, c.search.drawn_by, pose_at(head(), c.coil, c.side, start),
                                start, front_edge(c.coil));
      if (!edge) throw NoAnswer{};
      return *edge;
    }
    return grid_place(head(), c.side, mark(step_of(GridPosition{})), c.search.pitch_mm, spot);
  }

  /// Where the pulse went from the mark of the spot that answered.
  [[nodiscard]] SurfacePoint hotspot() {
    const Case& c = answers.the_case;
    const SurfacePoint spot = mark(step_of(c.hotspot));
    if (c.search.grid_on == GridOn::pulse_points)
      return draw_and_lay(head(), c.coil, c.search.drawn_by, c.side, spot, TapeDistances::left_out).pulse;
    const SurfacePoint near = skin().closest(*right({Task::hotspot, 0}).at);
    return lay_over(head(), c.coil, c.search.drawn_by, c.side, spot, near, TapeDistances::left_out).pulse;
  }

  [[nodiscard]] SurfacePoint site() {
    const TreatmentSettings& treatment = answers.the_case.treatment;
    if (treatment.rule == TreatmentRule::forward)
      return forward_tape(head(), mark({Task::hotspot, 0}), treatment.distance_mm).at(1).on_skin;
    const auto without_error = [](const std::string&, const Tape& tape, double share) {
      return tape.at(share);
    };
    const auto found = landmark(skin(), tapes_over_vertex(), treatment.label, without_error);
    if (!found) throw NoAnswer{};
    return found->on_skin;
  }

  [[nodiscard]] SurfacePoint edge() {
    const Case& c = answers.the_case;
    const SurfacePoint site = mark({Task::site, 0});
    const auto edge = mark_of(head(), c.coil, c.treatment.drawn_by, pose_at(head(), c.coil, side, site), site,
                              front_edge(c.coil));
    if (!edge) throw NoAnswer{};
    return *edge;
  }

  /// Angles are told in the head's own directions, whatever points were marked.
  [[nodiscard]] Placed coil() {
    const CoilSetup& setup = answers.the_case.coil;
    const SurfacePoint site = mark({Task::site, 0}), edge = mark({Task::edge_mark, 0});
    if (is_right({Task::site, 0}) && is_right({Task::edge_mark, 0})) return right({Task::coil, 0});
    Placed placed;
    try {
      const LaidOnMarks laid = lay_on_marks(answers.head, setup, side, site, edge);
      placed = at(laid.pulse);
      placed.angle_deg = laid.angle_deg;
    } catch (const GeometryError&) {
      // Marks that no placement fits: over the edge mark at the case's angle, as in a plan.
      placed = at(pulse_for_mark(answers.head, setup, setup.laid_by, side, edge));
      placed.angle_deg = setup.angle_deg;
    }
    return placed;
  }

  [[nodiscard]] SurfacePoint found_again() {
    const TapeEnds ends{mark({Task::vertex, 0}), mark({Task::four_points, 0}), mark({Task::four_points, 2}),
                        mark({Task::four_points, 3})};
    bool all_right = is_right({Task::vertex, 0});
    for (const int which : {0, 2, 3}) all_right = all_right && is_right({Task::four_points, which});
    return all_right ? answers.lost.at : looked_for(skin(), answers.lost, ends);
  }
};

Chain::Chain(const RightAnswers& answers)
    : parts_(new Parts{answers, side_of(answers.plan.treatment), {}, {}, {}}) {}

Chain::~Chain() = default;

std::optional<Placed> Chain::should_be(const Step& step) {
  return parts_->should_be(step);
}

void Chain::take(const Step& step, const Placed& placed) {
  parts_->taken[step] = placed;
  // What was asked for before this step was taken, no longer holds of its task and of those after it.
  auto& known = parts_->known;
  known.erase(known.lower_bound({step.task, 0}), known.end());
  if (step.task == Task::four_points) parts_->felt.reset();
}

std::optional<Placed> Chain::stands(const Step& step) {
  return parts_->stands(step);
}

}  // namespace scalpmark::geometry
