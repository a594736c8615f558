#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "geometry/hands/fitting_skin.h"
#include "geometry/head/head.h"
#include "geometry/plan/tape_readings.h"

namespace scalpmark::geometry {

/// The four tapes to a point on the skin, from the head's distance fields, which are worked out where they
/// are not there yet.
[[nodiscard]] TapeReadings tapes_to(const Head& head, const SurfacePoint& point);

/// A place on the skin that fits the readings.
struct FoundPlace {
  SurfacePoint point;    ///< where they fit best, thereabouts
  double misfit_mm = 0;  ///< root mean square of what the tapes miss it by
  double worst_mm = 0;   ///< the most by which one of the tapes misses it
  /// If the mark is here and not at another place that fits, it lies within this of the point, straight, at
  /// least 95 times of 100. Long where tapes meet at a flat angle.
  double spread_mm = 0;
};

/// A mark that may be further off than this is not found yet: it takes one more tape. Half as much again as a
/// step of the search grid. Ours, no source.
inline constexpr double vague_mm = 15;

struct FindOptions {
  /// How far off a reading is, one standard deviation: the tape read to the half centimetre, laid by hand
  /// over hair between two points that were felt for. Ours, no source.
  double reading_mm = 2.5;
};

/// All places at these tape distances, for a mark whose cap is lost, the best first: where the circles drawn
/// with the tapes meet, least squares of the distances where they do not quite. Exact to 0.1 mm for distances
/// without error. Vertex and tragi lie nearly in one plane, so that a place in front of it and its mirror
/// image behind often fit alike: more than one place is for the user to choose from, or for one more tape.
///
/// A place fits where the squared misses, in units of a reading's variance, come to no more than 25 over the
/// best place's (fitting_skin.h says why): of two places, the wrong one alone is returned at most 3 times in
/// 10 million (normal errors, places five standard deviations of a reading apart, the worst case). What fits
/// is found over the whole head, not from starting points, so that no place is missed; skin that hangs
/// together is one place. On the face (face_region.h) nothing is marked, and no place is looked for.
///
/// Refuses (GeometryError): fewer than two readings; a reading that is not a number above 0, naming it;
/// readings that no place fits (squared misses of more than 16 at the best one); a reading_mm that is not
/// above 0.
[[nodiscard]] std::vector<FoundPlace> find_by_tapes(const Head& head, const TapeReadings& readings,
                                                    const FindOptions& options = {});

/// The same for many readings on one head.
class TapeFinder {
public:
  /// Works out the head's fields where they are not there yet.
  explicit TapeFinder(const Head& head);
  [[nodiscard]] std::vector<FoundPlace> find(const TapeReadings& readings,
                                             const FindOptions& options = {}) const;

private:
  Head head_;
  FittingSkin skin_;
};

/// The largest distance between two of the places, straight, mm; 0 for one.
[[nodiscard]] double apart_mm(const Head& head, const std::vector<FoundPlace>& places);

/// A mark as its tapes found it, and which of the places that fit was taken for it: the only one, or one that
/// somebody chose.
struct FoundMark {
  std::vector<FoundPlace> places;    ///< the best first
  std::optional<std::size_t> taken;  ///< empty while there are several to choose from
  bool nearest_to_plan = false;      ///< it was taken of several for that, because that was asked for

  /// Whether the mark is known well enough to judge by: taken, and not vague.
  [[nodiscard]] bool is_sure() const { return taken && places[*taken].spread_mm <= vague_mm; }
};

/// The mark at these tape distances; a place is taken where only one fits.
[[nodiscard]] FoundMark find_mark(const TapeFinder& finder, const TapeReadings& readings,
                                  const FindOptions& options = {});
/// Takes, of all places that fit, the one nearest to `near`, for whoever was asked and wants it so.
void take_nearest(FoundMark& mark, const Head& head, const SurfacePoint& near);

/// Which of the places lies nearest to `near`, straight. There must be one.
[[nodiscard]] std::size_t nearest_place(const Head& head, const std::vector<FoundPlace>& places,
                                        const SurfacePoint& near);

}  // namespace scalpmark::geometry
