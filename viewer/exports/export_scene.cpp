#include "viewer/exports/export_scene.h"

#include <set>
#include <utility>

#include "geometry/hands/cap.h"
#include "geometry/head/landmarks.h"
#include "models/coils/coil_mesh.h"
#include "models/exports/solids.h"
#include "viewer/stage/scene/shapes.h"
#include "viewer/stage/things/things.h"

namespace scalpmark::viewer {

using Eigen::Vector2d;
using Eigen::Vector3d;

namespace {

/// Marks of an export lie this far over the skin and under it: seen from aside as well, and no gap on a round
/// head.
constexpr double mark_over_mm = 0.6, mark_under_mm = 1;
constexpr double tape_radius_mm = 0.5;
constexpr double exported_casing_opacity = 0.3, exported_windings_opacity = 0.7;

models::ExportColour export_colour(Role role, double opacity = 1) {
  const Colour c = colour_of(role);
  return {c.red, c.green, c.blue, opacity};
}

models::MarkOnSkin on_skin_of(const Mark& mark) {
  models::MarkOnSkin out{mark.name, mark.at, mark.normal, mark.along, {}};
  for (const Vector2d& p : triangles_px(mark.shape)) out.triangles.emplace_back(export_mm_a_pixel * p);
  return out;
}

void add_coil(const CoilBody& coil, models::ExportHead& head) {
  const auto add = [&](const char* name, models::Mesh mesh, Role role, double opacity) {
    if (mesh.triangles.empty()) return;
    head.parts.push_back(
        {name, export_colour(role, opacity),
         models::laid_there(std::move(mesh), coil.origin, coil.right, coil.front, coil.normal)});
  };
  add("coil windings", models::windings_mesh(coil.coil), Role::windings, exported_windings_opacity);
  add("coil casing", models::casing_mesh(coil.coil), Role::casing, exported_casing_opacity);
}

/// A tape's line, laid on the skin: its lower half lies in it.
void add_tape(const Line& line, models::ExportHead& head) {
  models::Mesh mesh = models::tube(line.points, tape_radius_mm);
  if (mesh.triangles.empty()) return;
  head.parts.push_back({"tape " + line.name, export_colour(line.role), std::move(mesh)});
}

}  // namespace

Shown shown_in_export() {
  Shown shown;
  shown.things = {Thing::skin,    Thing::landmarks, Thing::tapes, Thing::grid,      Thing::start,
                  Thing::hotspot, Thing::treatment, Thing::coil,  Thing::edge_marks};
  const auto& labels = geometry::landmark_labels(geometry::LandmarkSystem::ten_twenty);
  shown.landmarks = std::set<std::string>(labels.begin(), labels.end());
  shown.landmarks->insert({"Nz", "Iz", "Cz"});
  return shown;
}

models::ExportHead export_scene(const Scene& scene) {
  models::ExportHead head{scene.skin, scene.axes, export_colour(Role::skin), {}, {}};
  for (const Part& part : scene.parts) {
    for (const Mark& mark : part.marks) {
      head.marks.push_back(on_skin_of(mark));
      head.parts.push_back({mark.name, export_colour(mark.role),
                            models::mark_slab(head.marks.back(), mark_under_mm, mark_over_mm)});
    }
    if (part.thing == Thing::tapes)
      for (const Line& line : part.lines) add_tape(line, head);
    if (part.coil) add_coil(*part.coil, head);
  }
  return head;
}

models::FlatCut cut_above_brow(const geometry::Head& head, const geometry::Case& the_case) {
  const geometry::Cap cap = geometry::cap_on(head, the_case.cap.brim_over_nasion_mm);
  return {cap.front_at, head.axes().up};
}

std::string export_plan(const geometry::Head& head, const geometry::Case& the_case,
                        const geometry::Plan& plan, models::ExportFormat format, bool above_brow) {
  Shown shown = shown_in_export();
  shown.only_rule = the_case.coil.laid_by;
  // Raised, a disc that lies partly in the hotspot's ring would be one shape with it that means nothing.
  const double ring_mm = export_mm_a_pixel * (reach_px(Shape::ring) + reach_px(Shape::disc));
  if (!the_case.hotspot_awaited && (plan.start.wanted - plan.hotspot.pulse).norm() < ring_mm)
    shown.things.erase(Thing::start);
  const models::ExportHead scene = export_scene(show(head, the_case, plan, shown));
  std::optional<models::FlatCut> cut;
  if (above_brow) cut = cut_above_brow(head, the_case);
  return models::export_bytes(format, scene, cut);
}

}  // namespace scalpmark::viewer
