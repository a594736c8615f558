#pragma once

#include "geometry/head/head.h"
#include "geometry/plan/case.h"
#include "geometry/plan/pulse_shift.h"
#include "viewer/stage/scene/scene.h"

namespace scalpmark::viewer {

/// Marks this near to each other would be drawn one in the other.
inline constexpr double one_place_mm = 2;

/// What a thing can look at when it puts itself into a scene.
struct Showing {
  const geometry::Head& head;
  const geometry::Case& the_case;
  const geometry::Plan& plan;
  const Shown& shown;
  const geometry::Placement& placement;  ///< where the coil lies
  CalmNormals& normals;

  [[nodiscard]] Eigen::Vector3d normal_at(const Eigen::Vector3d& on_skin) const {
    return normals.at(head.skin(), on_skin);
  }
  [[nodiscard]] Mark mark(Thing thing, std::string name, Shape shape, Role role, const Eigen::Vector3d& at,
                          const Eigen::Vector3d& along) const {
    return make_mark(thing, std::move(name), shape, role, at, normal_at(at), along);
  }
  /// Whether a disc there would lie in the hotspot's ring, which goes round nothing.
  [[nodiscard]] bool is_in_hotspot_ring(const Eigen::Vector3d& at) const {
    return shown.has(Thing::hotspot) && !the_case.hotspot_awaited &&
           (at - plan.hotspot.pulse).norm() < one_place_mm;
  }
  /// The same of the hollow disc where the coil's pulse was wanted.
  [[nodiscard]] bool is_in_wanted_disc(const Eigen::Vector3d& at) const {
    return shown.has(Thing::wanted) && (shown.has(Thing::coil) || shown.has(Thing::edge_marks)) &&
           geometry::is_shifted(placement) && !is_in_hotspot_ring(placement.wanted) &&
           (at - placement.wanted).norm() < one_place_mm;
  }
};

/// Where each thing's rows stand in the legend, from the top.
enum InLegend {
  at_landmarks_in_legend,
  at_sites_in_legend,
  at_tolerance_in_legend,
  at_edge_marks_in_legend,
  at_wanted_in_legend,
  at_grid_in_legend,
  at_angle_in_legend,
  at_tapes_in_legend,
  at_coil_in_legend,
  at_cortex_in_legend,
  at_field_in_legend,
};

/// A thing's part of the scene, empty where it is not shown; into `around` goes what it says beside the head:
/// its rows of the legend, words, numbers. One file each.
using ShowThing = Part(const Showing& now, Surroundings& around);

/// The list, in the order of drawing: of what lets something be seen through it, what lies behind comes
/// first. A new thing is a line here and a file that defines it.
#define SCALPMARK_THINGS_SHOWN(thing)                                                                  \
  thing(show_surroundings) thing(show_cortex) thing(show_skin) thing(show_cap) thing(show_gaps)        \
      thing(show_field) thing(show_tapes) thing(show_landmarks) thing(show_grid) thing(show_tolerance) \
          thing(show_wanted) thing(show_sites) thing(show_angle) thing(show_edge_marks)                \
              thing(show_way_marks) thing(show_coil) thing(show_sight) thing(show_places)              \
                  thing(show_answers) thing(show_course) thing(show_practise) thing(show_notes)

/// The scene of a plan: as many parts as the list has, whatever is shown. `normals` makes the next scene of
/// the same head cheaper. Refuses (ViewerError) a coil on a spot the plan does not have.
[[nodiscard]] Scene show(const geometry::Head& head, const geometry::Case& the_case,
                         const geometry::Plan& plan, const Shown& shown, CalmNormals& normals);
[[nodiscard]] Scene show(const geometry::Head& head, const geometry::Case& the_case,
                         const geometry::Plan& plan, const Shown& shown);

}  // namespace scalpmark::viewer
