#include "viewer/page/page_data.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "geometry/base/error.h"
#include "geometry/plan/side_view.h"
#include "models/meshes/mesh.h"
#include "models/meshes/thin_triangles.h"
#include "viewer/page/kernel/side_json.h"
#include "viewer/page/kernel/skin_bytes.h"
#include "viewer/page/page_words.h"
#include "viewer/page/part_json.h"
#include "viewer/stage/things/things.h"
#include "viewer/words/find_again.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;
using nlohmann::ordered_json;

namespace {

/// How far the head is cut beside the coil; where the face is left out, no further than the scalp.
constexpr double whole_side_mm = 120, scalp_side_mm = 70;
constexpr std::size_t most_of_brain = 14000;  // triangles

Vector3d in_coil(const CoilBody& coil, const Vector3d& at) {
  const Vector3d from = at - coil.origin;
  return {from.dot(coil.right), from.dot(coil.front), from.dot(coil.normal)};
}

/// What belongs to the coil moves with it: in its own frame.
Part in_coil(Part part) {
  for (Line& line : part.lines)
    for (Vector3d& p : line.points) p = in_coil(*part.coil, p);
  for (Spot& spot : part.spots) spot.at = in_coil(*part.coil, spot.at);
  return part;
}

ordered_json frame_json(const CoilBody& coil) {
  return {{"origin", place_json(coil.origin)},
          {"right", direction_json(coil.right)},
          {"front", direction_json(coil.front)},
          {"normal", direction_json(coil.normal)}};
}

ordered_json coil_json(const geometry::Coil& coil) {
  const auto flat = [](const Eigen::Vector2d& p) { return ordered_json{p.x(), p.y()}; };
  ordered_json out;
  out["parts"] = ordered_json::array();
  for (const geometry::CoilPart& part : coil.parts) {
    ordered_json outline = ordered_json::array();
    for (const auto& p : part.outline) outline.push_back(flat(p));
    out["parts"].push_back({{"name", part.name},
                            {"outline", std::move(outline)},
                            {"bottom", part.bottom_mm},
                            {"top", part.top_mm},
                            {"bend", part.bend_deg}});
  }
  out["windings"] = ordered_json::array();
  for (const geometry::Winding& w : coil.windings)
    out["windings"].push_back({{"centre", flat(w.centre)},
                               {"inner", w.inner_mm},
                               {"outer", w.outer_mm},
                               {"turns", w.turns},
                               {"height", w.height_mm},
                               {"bend", w.bend_deg}});
  out["casing_colour"] = colour_json(Role::casing);
  out["windings_colour"] = colour_json(Role::windings);
  return out;
}

ordered_json body_json(const Body& body) {
  return {{"colour", colour_json(body.role)},
          {"ambient", body.ambient},
          {"diffuse", body.diffuse},
          {"opacity", body.opacity},
          {"light", body.glow ? colour_json(body.glow->role) : std::string()}};
}

ordered_json legend_json(const std::vector<LegendRow>& legend) {
  static constexpr std::array<const char*, 5> samples{"shape", "line", "coil", "lit", "field"};
  ordered_json out = ordered_json::array();
  for (const LegendRow& row : legend)
    out.push_back({{"sample", samples[static_cast<std::size_t>(row.sample)]},
                   {"shape", static_cast<int>(row.shape)},
                   {"colour", colour_json(row.role)},
                   {"text", row.text}});
  return out;
}

ordered_json scene_json(const PageDrawn& shown) {
  ordered_json out;
  out["toward_eye"] = direction_json(shown.scene.gaze.toward_eye);
  out["up"] = direction_json(shown.scene.gaze.up);
  if (shown.scene.close) {
    out["focus"] = place_json(shown.scene.close->at);
    out["across"] = shown.scene.close->across_mm;
  }
  out["parts"] = ordered_json::array();
  for (const Part& part : shown.drawn.parts) {
    if (part.body) {
      out[part.thing == Thing::cortex ? "brain" : "skin"] = body_json(*part.body);
    }
    if (part.coil) {
      out["frame"] = frame_json(*part.coil);
      out["coil"] = part_json(in_coil(part));
      continue;
    }
    ordered_json flat = part_json(part);
    if (flat.size() > 1) out["parts"].push_back(std::move(flat));
  }
  out["legend"] = legend_json(shown.drawn.around.legend);
  return out;
}

ordered_json sight_json(const HeadOfPage& head) {
  // Its middle and its reach: what fills a picture from every side.
  const auto& corners = head.drawn.vertices();
  Vector3d low = corners.front(), high = low;
  for (const Vector3d& p : corners) {
    low = low.cwiseMin(p);
    high = high.cwiseMax(p);
  }
  const geometry::HeadAxes& axes = head.plan.axes;
  return {{"middle", place_json(0.5 * (low + high))}, {"reach", std::round((high - low).norm())},
          {"open", !head.drawn.is_closed()},          {"right", direction_json(axes.right)},
          {"front", direction_json(axes.front)},      {"up", direction_json(axes.up)}};
}

}  // namespace

std::vector<PageDrawn> drawn(const HeadOfPage& head, std::vector<PageScene> scenes) {
  std::vector<PageDrawn> all;
  CalmNormals normals;
  for (PageScene& scene : scenes) {
    Scene of_it = show(head.loaded.head, head.file.the_case, head.plan, scene.shown, normals);
    all.push_back({std::move(scene), std::move(of_it)});
  }
  return all;
}

ordered_json page_data(const HeadOfPage& head, const std::vector<PageDrawn>& scenes, Face face,
                       const std::vector<std::string>& patterns) {
  ordered_json out;
  out["face"] = name_of(face);
  out["words"] = page_words(face);
  out["head"] = sight_json(head);
  out["shapes"] = shapes_json();
  out["halo"] = colour_json(Role::halo);
  out["coil"] = coil_json(head.file.the_case.coil.model);
  out["scenes"] = ordered_json::array();
  for (const PageDrawn& scene : scenes) out["scenes"].push_back(scene_json(scene));
  if (face == Face::patient) return out;
  out["lengths"] = length_formats();
  out["messages"] = translated_patterns(patterns);
  const geometry::Placement& site = head.plan.treatment;
  out["site"] = {{"wanted", place_json(site.wanted)},
                 {"edge", place_json(site.mark.value_or(site.edge))},
                 {"angle", std::round(1e3 * site.angle_deg) / 1e3}};
  out["laid_by"] = geometry::key_of(head.file.the_case.coil.laid_by);
  out["live"] = head.for_kernel;
  if (head.for_kernel) out["case"] = models::case_json(head.file);
  out["generic"] = head.file.head.kind == models::HeadKind::generic;  // which the kernel has in it
  try {
    out["side"] = side_json(geometry::side_view(head.loaded.head, head.file.the_case.coil.model, site,
                                                head.for_kernel ? whole_side_mm : scalp_side_mm));
  } catch (const geometry::GeometryError&) {
    // A skin that ends beside the coil cannot be cut there: no picture of the rules.
  }
  if (face == Face::class_room) return out;
  out["find_again"] = ordered_json::array();
  for (const TapeToRead& tape : find_again(head.plan))
    out["find_again"].push_back({{"mark", tape.mark}, {"from", tape.from}, {"mm", tape.mm}});
  return out;
}

PageBodies page_bodies(const HeadOfPage& head, const std::vector<PageDrawn>& scenes) {
  PageBodies bodies;
  bodies.skin = bytes_of(head.drawn);
  for (const PageDrawn& scene : scenes)
    for (const Part& part : scene.drawn.parts) {
      if (!part.body || part.thing != Thing::cortex || !bodies.brain.empty()) continue;
      const geometry::Surface& whole = part.body->surface;
      models::Mesh thin = models::thin_triangles({whole.vertices(), whole.triangles()}, most_of_brain);
      std::vector<double> light(whole.vertices().size(), 0);
      if (const auto& glow = part.body->glow; glow && !glow->corners)
        for (std::size_t i = 0; i < light.size(); ++i)
          light[i] = std::max(0.0, 1 - (whole.vertices()[i] - glow->at).norm() / glow->radius_mm);
      if (part.body->glow && part.body->glow->corners)
        for (const LitCorner& corner : *part.body->glow->corners)
          light[static_cast<std::size_t>(corner.corner)] = corner.share;
      for (const Vector3d& p : thin.vertices) {
        const geometry::SurfacePoint on = whole.closest(p);
        double share = 0;
        for (int k = 0; k < 3; ++k)
          share += on.weights[k] *
                   light[static_cast<std::size_t>(whole.triangle(on.face)[static_cast<std::size_t>(k)])];
        bodies.brain_light += static_cast<char>(std::lround(255 * std::clamp(share, 0.0, 1.0)));
      }
      bodies.brain = bytes_of({std::move(thin.vertices), std::move(thin.triangles)});
    }
  return bodies;
}

}  // namespace scalpmark::viewer
