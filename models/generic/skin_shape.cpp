#include "models/generic/skin_shape.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace scalpmark::models::generic {

using Eigen::Vector3d;

namespace {

// ---- Joining shapes ----

/// The lesser of two distances, rounded over `width` mm. Cubic, so that curvature does not jump.
double join(double a, double b, double width) {
  const double h = std::max(width - std::abs(a - b), 0.0) / width;
  return std::min(a, b) - h * h * h * width / 6;
}

double cut(double a, double b, double width) {
  return -join(-a, -b, width);
}

double square(double t) {
  return t * t;
}

double bell(double t) {
  return std::exp(-t * t);
}

/// 0 below `from`, 1 above `to`.
double step(double from, double to, double t) {
  const double s = std::clamp((t - from) / (to - from), 0.0, 1.0);
  return s * s * s * (s * (6 * s - 15) + 10);
}

/// A smooth line through values at ascending places (cubic Hermite, flat continuation).
template <size_t n>
double line_through(const std::array<std::array<double, 2>, n>& knots, double t) {
  if (t <= knots.front()[0]) return knots.front()[1];
  if (t >= knots.back()[0]) return knots.back()[1];
  size_t i = 1;
  while (knots[i][0] < t) ++i;
  const auto slope = [&](size_t k) {
    if (k == 0 || k == n - 1) return 0.0;
    return (knots[k + 1][1] - knots[k - 1][1]) / (knots[k + 1][0] - knots[k - 1][0]);
  };
  const double span = knots[i][0] - knots[i - 1][0];
  const double s = (t - knots[i - 1][0]) / span;
  const double s2 = s * s, s3 = s2 * s;
  return knots[i - 1][1] * (2 * s3 - 3 * s2 + 1) + span * slope(i - 1) * (s3 - 2 * s2 + s) +
         knots[i][1] * (3 * s2 - 2 * s3) + span * slope(i) * (s3 - s2);
}

// ---- Plain shapes ----

double ellipsoid(const Vector3d& p, const Vector3d& centre, const Vector3d& radii) {
  const Vector3d q = (p - centre).cwiseQuotient(radii);
  const double a = q.norm(), b = q.cwiseQuotient(radii).norm();
  return a < 1e-9 ? -radii.minCoeff() : a * (a - 1) / b;
}

/// A capsule whose radius changes from one end to the other.
double limb(const Vector3d& p, const Vector3d& a, const Vector3d& b, double radius_a, double radius_b) {
  const Vector3d d = b - a;
  const double t = std::clamp((p - a).dot(d) / d.squaredNorm(), 0.0, 1.0);
  return (p - a - t * d).norm() - radius_a - t * (radius_b - radius_a);
}

/// How far (mm) a soft bump of `height` mm (negative: a hollow) lifts the skin at p.
double bump(const Vector3d& p, const Vector3d& centre, const Vector3d& reach, double height) {
  const double r2 = (p - centre).cwiseQuotient(reach).squaredNorm();
  return r2 > 16 ? 0 : height * std::exp(-r2);
}

/// An ellipsoid made fuller between its axes by `fuller` (xy, yz, xz; 0 = an ellipsoid): the rounded box of a
/// skull. Given through squares of p over the radii; returns p's size relative to the surface.
double rounded_size(double x2, double y2, double z2, const Vector3d& fuller) {
  const double a = x2 + y2 + z2;
  const double b = fuller.x() * x2 * y2 + fuller.y() * y2 * z2 + fuller.z() * x2 * z2;
  return std::sqrt(0.5 * (a + std::sqrt(std::max(a * a - 4 * b, 0.0))));
}

// ---- Parts of the head; x >= 0 ----

/// The cranium about this point, mm.
const Vector3d cranium_middle(0, -2, 40);
/// How far from there its skin lies, mm, by where a direction (unit) points: row i, column j times forward^i
/// up^j. Right and left are in it through what the two leave to one, so both sides are the same.
///
/// Fitted to one real head, the template of Debian's mricron-data (ch2.nii.gz), scaled to the tapes of this
/// one, its two sides at once: over the scalp to its skin, by least squares, then to the gaps and edge marks
/// under a coil at eight places (tests/reference/generic_curve_test.cpp) for five sets of tapes. Under face
/// and neck it follows the form drawn before, which was not measured on anybody.
constexpr size_t cranium_powers = 9;
constexpr std::array<std::array<double, cranium_powers>, cranium_powers> cranium_mm{
    {{72.66, 0.91, 36.89, 5.93, -40.26, -21.00, 25.95, 17.46, -2.64},
     {-9.31, 7.83, 2.51, -58.53, -0.57, 124.71, 2.96, -70.68},
     {39.25, 35.76, -79.62, -122.41, 181.90, 97.01, -111.03},
     {28.83, -56.18, -62.37, 88.97, 56.23, -125.70},
     {-71.50, -74.66, 224.86, 136.15, -162.07},
     {-40.91, 95.03, 49.87, -20.50},
     {128.94, 28.68, -183.84},
     {19.59, -54.39},
     {-71.22}}};

double cranium(const Vector3d& p) {
  const Vector3d q = p - cranium_middle;
  const double out = q.norm();
  if (out < 1e-6) return -60;
  const double forward = q.y() / out, up = q.z() / out;
  double skin = 0;
  for (size_t i = cranium_powers; i-- > 0;) {
    double row = 0;
    for (size_t j = cranium_powers - i; j-- > 0;) row = row * up + cranium_mm[i][j];
    skin = skin * forward + row;
  }
  return out - skin;
}

/// Sections across the face, from the chin up: how far forward and how wide.
constexpr std::array<std::array<double, 2>, 9> face_front{
    {{-95, 70}, {-84, 86}, {-68, 92.5}, {-52, 91}, {-36, 95}, {-15, 94}, {8, 88}, {40, 84}, {62, 72}}};
constexpr std::array<std::array<double, 2>, 8> face_half_width{
    {{-95, 30}, {-80, 40}, {-60, 46}, {-40, 53}, {-15, 61}, {5, 65}, {35, 63}, {62, 52}}};

double face(const Vector3d& p) {
  const double middle = 22;
  const double depth = line_through(face_front, p.z()) - middle;
  const double width = line_through(face_half_width, p.z());
  const double y = p.y() - middle;
  const double size =
      rounded_size(square(p.x() / width), square(y / (y > 0 ? depth : 62.0)), 0, {0.22, 0, 0});
  const double section = size < 1e-6 ? -40 : std::hypot(p.x(), y) * (1 - 1 / size);
  // The underside of the jaw rises from the chin to the jaw's corner.
  const double underside = (-24 * (p.y() - 84) - 76 * (p.z() + 83)) / std::hypot(24, 76);
  return cut(cut(section, underside, 26), p.z() - 56, 30);
}

constexpr std::array<std::array<double, 2>, 5> neck_front{
    {{-140, 36}, {-120, 35}, {-90, 38}, {-60, 40}, {0, 42}}};
constexpr std::array<std::array<double, 2>, 5> neck_back{
    {{-140, -93}, {-110, -84}, {-70, -71}, {-35, -64}, {0, -64}}};
constexpr std::array<std::array<double, 2>, 5> neck_half_width{
    {{-140, 64}, {-115, 56}, {-80, 52}, {-40, 52}, {0, 50}}};

double neck(const Vector3d& p) {
  const double front = line_through(neck_front, p.z()), back = line_through(neck_back, p.z());
  const double y = (p.y() - 0.5 * (front + back)) / (0.5 * (front - back));
  const double width = line_through(neck_half_width, p.z());
  const double size = rounded_size(square(p.x() / width), square(y), 0, {0.1, 0, 0});
  const double section = size < 1e-6 ? -50 : std::hypot(p.x(), p.y() - 0.5 * (front + back)) * (1 - 1 / size);
  return cut(section, p.z() - 10, 30);
}

double nose(const Vector3d& p) {
  // The bridge on its broad foot, the tip, the wings, the wall between the nostrils.
  double d = limb(p, {0, 85.5, 30}, {0, 102, 3}, 5.4, 6.6);
  d = join(d, limb(p, {0, 102, 3}, {0, 106.5, -5}, 6.6, 8.0), 8);
  d = join(d, limb(p, {0, 82, 24}, {0, 92.5, -6}, 7.5, 12.5), 10);
  d = join(d, ellipsoid(p, {10.2, 98.2, -8.5}, {5.4, 9.0, 6.4}), 10);
  d = join(d, limb(p, {0, 107, -8.0}, {0, 96, -13.6}, 4.6, 5.0), 10);
  return d;
}

double lips(const Vector3d& p) {
  // Both follow the teeth: a shallow arch.
  const double x = p.x();
  const double arch = 96.0 - x * x / 62;
  const double toward_corner = square(std::min(x / 25, 1.0));
  const double past_corner = std::max(x - 24.5, 0.0);
  const double thin = std::sqrt(1 - 0.97 * toward_corner);
  const double bow = 1.0 * bell((x - 5) / 4.5) - 0.7 * bell(x / 3);
  const double upper =
      std::hypot(p.y() - arch - 0.9, p.z() + 35.2 - 0.6 * bow + 3 * toward_corner, past_corner) - 4.2 * thin;
  const double lower =
      std::hypot(p.y() - arch + 0.5, p.z() + 42.4 - 4 * toward_corner, past_corner) - 4.6 * thin;
  return join(upper, lower, 2.6);
}

double eye(const Vector3d& p) {
  return ellipsoid(p, {31.5, 72.3, 26.5}, {15.5, 12.4, 11.2});
}

/// Soft hollows and bumps that turn the joined parts into a face: lift of the skin, mm.
double modelling(const Vector3d& p) {
  double lift = 0;
  // Brow, arched, and the bridge between.
  lift += bump(p, {18, 91, 43.5}, {14, 14, 9}, 0.8);
  lift += bump(p, {37, 83, 48}, {16, 16, 8}, 2.0);
  lift += bump(p, {0, 93, 48}, {14, 12, 10}, 0.8);
  lift += bump(p, {0, 92, 33}, {11, 12, 8}, -4.0);
  // Eye sockets: deepest beside the nose, open toward the temple.
  lift += bump(p, {32, 86, 25.5}, {18, 17, 13.5}, -5.4);
  lift += bump(p, {17, 88, 26}, {9, 12, 12}, -3.2);
  // Cheekbone and the hollow under it, cheek, temple.
  lift += bump(p, {49, 66, 4}, {19, 22, 13}, 3.2);
  lift += bump(p, {52, 52, -28}, {15, 26, 20}, -2.0);
  lift += bump(p, {28, 84, -8}, {14, 14, 14}, 1.5);
  lift += bump(p, {66, 50, 42}, {16, 24, 20}, -3.2);
  // The mouth's mound, the lip's groove, the mouth's corner, under the lip, chin.
  lift += bump(p, {0, 93, -28}, {26, 16, 17}, 3.0);
  lift += bump(p, {0, 100, -24}, {3.2, 8, 8}, -1.1);
  lift += bump(p, {26.5, 86, -38.5}, {5, 8, 5}, -1.0);
  lift += bump(p, {0, 92, -53.5}, {17, 10, 6}, -2.2);
  lift += bump(p, {0, 91, -69}, {15, 14, 11}, 2.4);
  // Jaw's corner, the back of the head above the neck.
  lift += bump(p, {50, 8, -52}, {16, 20, 16}, 2.5);
  lift += bump(p, {0, -92, 0}, {16, 16, 10}, 2.4);
  // The neck: the band from behind the ear to the breastbone, the larynx.
  const Vector3d band_top(57, -22, -28), band(-41, 54, -104);
  const double along = std::clamp((p - band_top).dot(band) / band.squaredNorm(), 0.0, 1.1);
  lift += 2.4 * bell((p - band_top - along * band).norm() / 11);
  lift += bump(p, {0, 38, -106}, {9, 14, 12}, 1.8);
  return lift;
}

/// The ear is a dish: a curved plate standing off the head, with a rolled rim, an inner fold, a bowl that
/// leads to the ear canal, a lobe, and the tragus in front. Local axes: back along the ear's breadth, up
/// along its length (leaning back), and out of its face.
double ear(const Vector3d& p, double without) {
  const Vector3d q = p - Vector3d(73.5, -14.5, 0);
  if (q.squaredNorm() > square(60)) return without;
  constexpr double lean = 0.24, stand = 0.42;  // radians
  const double up = q.z() * std::cos(lean) - q.y() * std::sin(lean);
  const double level_back = -q.y() * std::cos(lean) - q.z() * std::sin(lean);
  const double back = level_back * std::cos(stand) + q.x() * std::sin(stand);
  const double out = q.x() * std::cos(stand) - level_back * std::sin(stand);
  // The outline: an egg, narrow below.
  const double half_width = 17.0 + 0.085 * up - 0.0022 * square(up);
  const double from_middle = std::hypot(back / std::max(half_width, 6.0), (up + 0.5) / 30.5);
  const double to_rim_mm = (from_middle - 1) * 17;
  // How far the plate's middle stands out.
  const double above_lobe = step(-24, -12, up);
  const double bowl = std::hypot((back + 3.5) / 10.5, (up + 4) / 14.0);
  const double fold = bell((bowl - 1.28) / 0.22) * step(-14, 2, back) * above_lobe;
  const double base = 0.05 * up - 2.5 * step(10, 28, -up);
  const double front = base + 1.9 + 2.2 * fold - 7.0 * (1 - step(0.35, 1.25, bowl));
  const double rear = base - 1.9 - 12.0 * (1 - step(0.7, 1.7, bowl));
  double d = cut(cut((out - front) / 1.25, (rear - out) / 1.25, 1.5), to_rim_mm, 2.0);
  // The rim rolls outward over the top and down the back, thins out to the lobe.
  const double rim_radius = 1.2 + 1.5 * step(-26, -6, up);
  d = join(d, std::hypot(to_rim_mm + 1.8, out - base - 1.6 * above_lobe) - rim_radius, 2.0);
  // Its root runs into the bowl.
  d = join(d, limb({back, up, out}, {-14, 12, 0}, {-5, 1.5, -4.5}, 2.2, 1.6), 3);
  // The lobe.
  d = join(d, ellipsoid({back, up, out}, {-4.5, -23.0, -1.5}, {7.2, 7.8, 3.0}), 6);
  d = join(without, d, 7);
  // The tragus and, facing it, the lesser flap; between them the notch. Behind the tragus, the canal.
  d += bump({back, up, out}, {-7.0, -2.0, -6}, {4.5, 6, 6}, 4.5);
  d = join(d, ellipsoid(p, {71.2, -1.8, -0.8}, {3.4, 4.6, 6.6}), 6);
  d = join(d, ellipsoid({back, up, out}, {-0.5, -14.5, -0.9}, {4.8, 3.4, 2.8}), 6);
  return d;
}

/// The line where the lids meet, and the fold of the upper lid: lift of the skin, mm.
double lid_lines(const Vector3d& p) {
  const double from_middle = p.x() - 31.5;
  const double within = (1 - step(10, 15, std::abs(from_middle))) * step(70, 76, p.y());
  if (within == 0) return 0;
  const double meet = 22.3 + 0.013 * square(from_middle), fold = 33.0 - 0.016 * square(from_middle - 2);
  return within * (-0.9 * bell((p.z() - meet) / 1.0) + 0.35 * bell((p.z() - meet - 2.2) / 1.3) -
                   0.7 * bell((p.z() - fold) / 1.3));
}

/// The nose is drawn a little long. Where the face's parts are looked up for a point of the skin, so that
/// nose and lips come to lie 3 mm higher, with brow and chin where they are: nasion to under the nose 52 mm
/// (Farkas 1994, memory: men 54.8, women 50.6).
Vector3d drawn_at(const Vector3d& p) {
  constexpr double higher_mm = 3;
  const double here = step(-28, 0, -p.z()) * (1 - step(36, 84, -p.z())) * step(0, 55, p.y());
  return {p.x(), p.y(), p.z() - higher_mm * here};
}

double off_skin_folded(const Vector3d& p) {
  const Vector3d drawn = drawn_at(p);
  double d = cranium(p);
  d = join(d, neck(p), 34);
  d = join(d, face(drawn), 26);
  d -= modelling(drawn);
  d = join(d, nose(drawn), 10);
  d = join(d, eye(drawn), 5) - lid_lines(drawn);
  d = join(d, lips(drawn), 5);
  d = ear(p, d);
  // Nostrils.
  d += bump(drawn, {6.2, 103, -17}, {2.8, 4.8, 3.6}, 4.0);
  // The base.
  return cut(d, -132 - p.z(), 8);
}

/// Folds left onto right without a crease at the midline.
Vector3d folded(const Vector3d& p) {
  constexpr double rounding_mm = 0.8;
  return {std::sqrt(p.x() * p.x() + rounding_mm * rounding_mm), p.y(), p.z()};
}

}  // namespace

double off_skin_mm(const Vector3d& p) {
  return off_skin_folded(folded(p));
}

namespace {
Vector3d slope(const Vector3d& p) {
  constexpr double h = 1e-3;  // mm: far below the finest feature, far above rounding
  Vector3d g;
  for (int k = 0; k < 3; ++k) {
    Vector3d step = Vector3d::Zero();
    step[k] = h;
    g[k] = (off_skin_mm(p + step) - off_skin_mm(p - step)) / (2 * h);
  }
  return g;
}
}  // namespace

Vector3d onto_skin(const Vector3d& p) {
  constexpr double settled_mm = 1e-6;
  Vector3d q = p;
  double off = off_skin_mm(q);
  for (int turn = 0; turn < 8 && std::abs(off) > settled_mm; ++turn) {
    const Vector3d g = slope(q);
    // One slope serves as long as it gets nearer quickly.
    for (int i = 0; i < 6 && std::abs(off) > settled_mm; ++i) {
      const Vector3d move = -off / std::max(g.squaredNorm(), 0.05) * g;
      // Never further than 2 mm at once, so that a point does not jump to another fold.
      q += move * std::min(1.0, 2.0 / move.norm());
      const double before = off;
      off = off_skin_mm(q);
      if (std::abs(off) > 0.2 * std::abs(before)) break;
    }
  }
  return q;
}

double edge_length_mm(const Vector3d& p) {
  const Vector3d q = drawn_at({std::abs(p.x()), p.y(), p.z()});
  double fine = 0;
  fine = std::max(fine, bell((q - Vector3d(32, 84, 27)).cwiseQuotient(Vector3d(26, 30, 20)).norm()));
  fine = std::max(fine, bell((q - Vector3d(0, 104, -6)).cwiseQuotient(Vector3d(24, 34, 20)).norm()));
  fine = std::max(fine, bell((q - Vector3d(0, 98, -39)).cwiseQuotient(Vector3d(34, 24, 18)).norm()));
  fine = std::max(fine, bell((q - Vector3d(78, -14, 0)).cwiseQuotient(Vector3d(22, 32, 42)).norm()));
  return 2.3 - 1.2 * std::min(1.0, 1.5 * fine);
}

FiducialPoints fiducial_points() {
  // Along a line through the head, from outside in.
  const auto hit = [](Vector3d from, const Vector3d& direction) {
    while (off_skin_mm(from) > 0.5) from += 0.25 * direction;
    double low = -1, high = 4;
    for (int i = 0; i < 60; ++i) {
      const double middle = 0.5 * (low + high);
      (off_skin_mm(from + middle * direction) > 0 ? low : high) = middle;
    }
    return Vector3d(from + low * direction);
  };
  // The nasion: deepest between nose and forehead. The inion: where the back of the head turns to the neck.
  Vector3d nasion(0, 1e9, 0);
  for (double z = 20; z < 46; z += 0.05) {
    const Vector3d at = hit({0, 140, z}, -Vector3d::UnitY());
    if (at.y() < nasion.y()) nasion = at;
  }
  return {nasion, hit({0, -140, 0}, Vector3d::UnitY()), hit({110, 0, 0}, -Vector3d::UnitX())};
}

Box right_half_box() {
  return {{0, -112, -140}, {104, 130, 140}};
}

}  // namespace scalpmark::models::generic
