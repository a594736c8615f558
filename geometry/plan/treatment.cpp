#include "geometry/plan/treatment.h"

#include "geometry/base/error.h"
#include "geometry/head/face_region.h"
#include "geometry/head/landmark_names.h"
#include "geometry/head/on_head.h"
#include "geometry/paths/shortest_path.h"
#include "geometry/plan/lay_on_marks.h"

namespace scalpmark::geometry {

using Eigen::Vector3d;

Side treatment_side(const Case& the_case) {
  if (the_case.treatment.rule != TreatmentRule::landmark) return the_case.side;
  return side_of_label(the_case.treatment.label).value_or(the_case.side);
}

Side laying_side(const Head& head, const Case& the_case, const SurfacePoint& at) {
  if (treatment_side(the_case) == the_case.side) return the_case.side;
  const Eigen::Vector3d from_middle = head.skin().position(at) - head.skin().position(head.vertex());
  return from_middle.dot(head.axes().right) < 0 ? Side::left : Side::right;
}

LaidCoil lay_on_site(const Head& head, const Case& the_case, Side side, const SurfacePoint& site,
                     TapeDistances tapes) {
  LaidCoil coil = draw_and_lay(head, the_case.coil, the_case.treatment.drawn_by, side, site, tapes);
  if (the_case.treatment.drawn_by != the_case.coil.laid_by && coil.mark) try {
      coil = lay_on_both(head, the_case.coil, side, coil, tapes);
    } catch (const GeometryError&) {
      // no placement fits both
    }
  return coil;
}

LaidTreatment lay_treatment(const Head& head, const Case& the_case, const SurfacePoint& hotspot,
                            TapeDistances tapes) {
  LaidTreatment t;
  t.side = treatment_side(the_case);
  std::optional<Landmark> label;
  SurfacePoint site;
  if (the_case.treatment.rule == TreatmentRule::landmark) {
    label = landmark(head, the_case.treatment.label);
    site = label->on_skin;
  } else {
    t.step = forward_tape(head, hotspot, the_case.treatment.distance_mm);
    site = t.step->at(1).on_skin;
  }
  if (on_face(head, head.skin().position(site)))
    throw GeometryError(
        label
            ? Message::of("The position %1 lies on the face of this head; choose another.", label->name)
            : Message::of(
                  "The treatment site, %1 cm forward of the hotspot, falls on the face; shorten treatment.distance_mm.",
                  number(the_case.treatment.distance_mm / 10)));
  t.coil = lay_on_site(head, the_case, t.side, site, tapes);
  return t;
}

std::vector<TreatmentAlternative> treatment_alternatives(const Head& head, const Case& the_case,
                                                         const std::vector<Landmark>& landmarks,
                                                         const SurfacePoint& hotspot,
                                                         const LaidTreatment& treatment) {
  const Surface& skin = head.skin();
  std::vector<TreatmentAlternative> all;
  std::vector<SurfacePoint> places;
  const auto add = [&](TreatmentAlternative a, const SurfacePoint& at) {
    a.pulse = skin.position(at);
    if (on_face(head, a.pulse)) return;
    all.push_back(std::move(a));
    places.push_back(at);
  };
  // A step forward from the hotspot is none to a site across the head.
  if (treatment.side == the_case.side)
    for (const double mm : {50.0, 55.0, 60.0})
      add({TreatmentRule::forward, mm, "", {}, 0}, forward_tape(head, hotspot, mm).at(1).on_skin);
  const Landmark* f = find(landmarks, label_on_side("F3", treatment.side));
  const Landmark* af = find(landmarks, label_on_side("AF3", treatment.side));
  add({TreatmentRule::landmark, 0, f->name, {}, 0}, f->on_skin);
  add({TreatmentRule::landmark, 0, f->name + "-" + af->name, {}, 0}, skin.closest(0.5 * (f->at + af->at)));
  const std::vector<double> mm = shortest_distances(skin, treatment.coil.wanted, places);
  for (size_t i = 0; i < mm.size(); ++i) all[i].tape_from_treatment_mm = mm[i];
  return all;
}

}  // namespace scalpmark::geometry
