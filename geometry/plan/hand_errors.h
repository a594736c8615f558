#pragma once

namespace scalpmark::geometry {

/// How far off hands are. Each figure is one standard deviation in each direction it works in, unless it says
/// otherwise. All can be changed; zero switches a cause off.
struct HandErrors {
  /// Nasion, inion and each tragus, felt for: up-down and across. Ours, chosen so that the 10-20 positions
  /// made from them spread by the 4.7 mm that working by hand adds (9.0 mm by hand, 7.7 mm by computer on the
  /// same 17 adults: Jurcak et al. 2005, NeuroImage 26:1184-1192; the rest of the 9.0 is how heads differ).
  double fiducial_mm = 4;
  /// One reading of a tape. A tape is read to the half centimetre (common practice, no source): anything
  /// within 2.5 mm either way, so 5 / sqrt(12).
  double tape_mm = 1.4;
  /// A pencil mark, and an edge laid on it by eye. Ours, no source.
  double mark_mm = 1;
  /// The coil's angle to the midline as the eye alone holds it; marks then correct it (lay_on_marks.h). With
  /// cap and marks it was 6.0 degrees off on average (Caulfield et al. 2022, Brain Stimul 15:1192-1205), and
  /// a normal error is 0.80 standard deviations off on average. That the eye alone does as well is our
  /// assumption.
  double angle_deg = 7.5;
  /// The coil's roll and its pitch: 7.8 degrees out of tangent on average (Caulfield et al. 2022), and two
  /// equal normal errors are together 1.25 standard deviations off on average.
  double tilt_deg = 6.2;
  /// How the cap sits off when it is put on again: slid forward or back and to a side, along the sphere it
  /// slides on (hands/cap.h), and turned about the upright. Guesses, no source: some 3 mm each way at the
  /// brim over the nose, where two degrees of turn are as much. Zero for marks on the skin.
  double cap_forward_mm = 3, cap_side_mm = 3, cap_turn_deg = 2;
  /// In how many of 100 placements the coil is laid by another rule than the mark was made by. Ours, no
  /// source.
  double other_rule_percent = 10;
  /// How far the eye is off the coil's axis when it looks past the coil at a mark, forward or back and to a
  /// side: the coil's edge is then seen over another place of the skin, by the gap between them times the
  /// tangent. A guess; no source.
  double sight_deg = 10;

  friend bool operator==(const HandErrors&, const HandErrors&) = default;
};

}  // namespace scalpmark::geometry
