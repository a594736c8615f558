#include "geometry/hands/errors_made.h"

#include <cmath>

namespace scalpmark::geometry {

namespace {

/// A share of a tape takes two readings: that share of the whole one's error, and all of the part's.
double reading_a_share(double share) {
  return std::sqrt(1 + share * share);
}

class Sources {
public:
  using Place = double& (*)(ErrorsMade&, size_t);

  explicit Sources(const HandErrors& errors) : e_(errors) {}

  void add(Cause cause, double deviation, Place place, size_t index = 0) {
    all_.push_back({cause, deviation, place, index});
  }
  void fiducial(Place place) { add(Cause::fiducials, e_.fiducial_mm, place); }
  void read(double times, Place place, size_t index = 0) {
    add(Cause::tape, times * e_.tape_mm, place, index);
  }
  void pencil(Place place, size_t index = 0) { add(Cause::marks, e_.mark_mm, place, index); }
  void look(Place place, size_t index = 0) { add(Cause::sight, e_.sight_deg, place, index); }

  [[nodiscard]] std::vector<ErrorSource> all() && { return std::move(all_); }

private:
  const HandErrors& e_;
  std::vector<ErrorSource> all_;
};

void add_fiducials(Sources& s) {
  s.fiducial([](ErrorsMade& m, size_t) -> double& { return m.nasion[0]; });
  s.fiducial([](ErrorsMade& m, size_t) -> double& { return m.nasion[1]; });
  s.fiducial([](ErrorsMade& m, size_t) -> double& { return m.inion[0]; });
  s.fiducial([](ErrorsMade& m, size_t) -> double& { return m.inion[1]; });
  s.fiducial([](ErrorsMade& m, size_t) -> double& { return m.left_tragus[0]; });
  s.fiducial([](ErrorsMade& m, size_t) -> double& { return m.left_tragus[1]; });
  s.fiducial([](ErrorsMade& m, size_t) -> double& { return m.right_tragus[0]; });
  s.fiducial([](ErrorsMade& m, size_t) -> double& { return m.right_tragus[1]; });
}

void add_vertex(Sources& s) {
  s.read(reading_a_share(0.5), [](ErrorsMade& m, size_t) -> double& { return m.vertex_read[0]; });
  s.read(reading_a_share(0.5), [](ErrorsMade& m, size_t) -> double& { return m.vertex_read[1]; });
  s.pencil([](ErrorsMade& m, size_t) -> double& { return m.vertex_mark[0]; });
  s.pencil([](ErrorsMade& m, size_t) -> double& { return m.vertex_mark[1]; });
}

/// The last landmark is the site, and its pencil mark the site's.
void add_landmarks(Sources& s, const std::vector<double>& shares) {
  for (size_t i = 0; i < shares.size(); ++i) {
    s.read(
        reading_a_share(shares[i]), [](ErrorsMade& m, size_t k) -> double& { return m.landmarks[k].read; },
        i);
    if (i + 1 == shares.size()) break;
    s.pencil([](ErrorsMade& m, size_t k) -> double& { return m.landmarks[k].pencil[0]; }, i);
    s.pencil([](ErrorsMade& m, size_t k) -> double& { return m.landmarks[k].pencil[1]; }, i);
  }
}

void add_steps_from_vertex(Sources& s, const Case& c) {
  if (c.search.lateral_mm != 0) s.read(1, [](ErrorsMade& m, size_t) -> double& { return m.lateral_read; });
  if (c.search.anterior_mm != 0) s.read(1, [](ErrorsMade& m, size_t) -> double& { return m.anterior_read; });
  s.pencil([](ErrorsMade& m, size_t) -> double& { return m.start_mark[0]; });
  s.pencil([](ErrorsMade& m, size_t) -> double& { return m.start_mark[1]; });
  // A place between spots is measured both ways.
  const bool off_grid = c.hotspot_off_grid.is_given();
  if (off_grid || c.hotspot.row != 0)
    s.read(1, [](ErrorsMade& m, size_t) -> double& { return m.spot_read[0]; });
  if (off_grid || c.hotspot.column != 0)
    s.read(1, [](ErrorsMade& m, size_t) -> double& { return m.spot_read[1]; });
  if (off_grid || c.hotspot.row != 0 || c.hotspot.column != 0) {
    s.pencil([](ErrorsMade& m, size_t) -> double& { return m.spot_mark[0]; });
    s.pencil([](ErrorsMade& m, size_t) -> double& { return m.spot_mark[1]; });
  }
  s.read(1, [](ErrorsMade& m, size_t) -> double& { return m.distance_read; });
}

/// Only the tape rule measures from site to mark; the others look at the coil's own edge.
void add_coil_mark(Sources& s, const Case& c, size_t i) {
  if (c.treatment.drawn_by == MarkRule::tape)
    s.read(
        1, [](ErrorsMade& m, size_t k) -> double& { return m.coil_marks[k].read; }, i);
  s.pencil([](ErrorsMade& m, size_t k) -> double& { return m.coil_marks[k].pencil[0]; }, i);
  s.pencil([](ErrorsMade& m, size_t k) -> double& { return m.coil_marks[k].pencil[1]; }, i);
}

/// A look counts where the eye carries a place of the coil to the skin; a tape needs none.
void add_look(Sources& s, const Case& c, size_t i) {
  if (c.treatment.drawn_by != MarkRule::tape) {
    s.look([](ErrorsMade& m, size_t k) -> double& { return m.looks[k].drawn_deg[0]; }, i);
    s.look([](ErrorsMade& m, size_t k) -> double& { return m.looks[k].drawn_deg[1]; }, i);
  }
  if (c.coil.laid_by != MarkRule::tape) {
    s.look([](ErrorsMade& m, size_t k) -> double& { return m.looks[k].laid_deg[0]; }, i);
    s.look([](ErrorsMade& m, size_t k) -> double& { return m.looks[k].laid_deg[1]; }, i);
  }
}

}  // namespace

std::vector<ErrorSource> error_sources(const Case& c, const HandErrors& e, const ErrorScope& scope) {
  Sources s(e);
  add_fiducials(s);
  add_vertex(s);
  if (c.treatment.rule == TreatmentRule::landmark)
    add_landmarks(s, scope.landmark_shares);
  else
    add_steps_from_vertex(s, c);
  s.pencil([](ErrorsMade& m, size_t) -> double& { return m.site_mark[0]; });
  s.pencil([](ErrorsMade& m, size_t) -> double& { return m.site_mark[1]; });
  s.add(Cause::angle, e.angle_deg, [](ErrorsMade& m, size_t) -> double& { return m.angle_deg; });
  s.add(Cause::cap, e.cap_forward_mm, [](ErrorsMade& m, size_t) -> double& { return m.cap_forward_mm; });
  s.add(Cause::cap, e.cap_side_mm, [](ErrorsMade& m, size_t) -> double& { return m.cap_side_mm; });
  s.add(Cause::cap, e.cap_turn_deg, [](ErrorsMade& m, size_t) -> double& { return m.cap_turn_deg; });
  s.add(Cause::tilt, e.tilt_deg, [](ErrorsMade& m, size_t) -> double& { return m.tilt.roll_deg; });
  s.add(Cause::tilt, e.tilt_deg, [](ErrorsMade& m, size_t) -> double& { return m.tilt.pitch_deg; });
  if (scope.by_site) {
    s.pencil([](ErrorsMade& m, size_t) -> double& { return m.line_mm; });
    s.look([](ErrorsMade& m, size_t) -> double& { return m.line_deg; });
  }
  for (size_t i = 0; i < scope.coil_marks; ++i) add_coil_mark(s, c, i);
  for (size_t i = 0; i < scope.looks; ++i) add_look(s, c, i);
  return std::move(s).all();
}

}  // namespace scalpmark::geometry
