#include "models/meshes/mesh_file.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <bit>
#include <cstdint>
#include <cstring>

#include "geometry/base/error.h"
#include "geometry/head/guess_fiducials.h"
#include "models/files/error.h"
#include "models/files/own_files.h"
#include "models/files/safe_file.h"
#include "models/generic/generic_head.h"
#include "models/meshes/close_vertices.h"
#include "models/meshes/mesh_pieces.h"
#include "models/meshes/mesh_repair.h"
#include "models/meshes/scan_repair.h"
#include "models/meshes/sound_skin.h"
#include "models/meshes/triangle_soup.h"

namespace scalpmark::models {

namespace fs = std::filesystem;
using Eigen::Vector3d;
using geometry::Triangle;

namespace {

// What may be a head, with neck and shoulders or without, mm.
constexpr double smallest_extent_mm = 150, largest_extent_mm = 600;
constexpr double smallest_diagonal_mm = 200, largest_diagonal_mm = 900;
constexpr double thinnest_mm = 30;

struct UnitName {
  Unit unit;
  double mm;
  geometry::Message name;
};
// In the order in which they are tried.
const std::array<UnitName, 4>& unit_names() {
  static const std::array<UnitName, 4> names{{{Unit::millimetre, 1, Message::of("millimetres")},
                                              {Unit::centimetre, 10, Message::of("centimetres")},
                                              {Unit::metre, 1000, Message::of("metres")},
                                              {Unit::inch, 25.4, Message::of("inches")}}};
  return names;
}

Vector3d extent_of(const std::vector<Vector3d>& points) {
  Vector3d low = points.front(), high = points.front();
  for (const Vector3d& p : points) {
    low = low.cwiseMin(p);
    high = high.cwiseMax(p);
  }
  return high - low;
}

/// The extent in the direction in which the points spread least: a tilted sheet is thin too.
double thinnest_extent(const std::vector<Vector3d>& points) {
  Vector3d middle = Vector3d::Zero();
  for (const Vector3d& p : points) middle += p / static_cast<double>(points.size());
  Eigen::Matrix3d spread = Eigen::Matrix3d::Zero();
  for (const Vector3d& p : points) spread += (p - middle) * (p - middle).transpose();
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> solver(spread);
  const Vector3d thin = solver.eigenvectors().col(0);
  double low = 0, high = 0;
  for (const Vector3d& p : points) {
    low = std::min(low, thin.dot(p - middle));
    high = std::max(high, thin.dot(p - middle));
  }
  return high - low;
}

std::vector<const UnitName*> fitting_units(double extent) {
  std::vector<const UnitName*> fitting;
  for (const UnitName& u : unit_names())
    if (extent * u.mm >= smallest_extent_mm && extent * u.mm <= largest_extent_mm) fitting.push_back(&u);
  return fitting;
}

/// The unit of a file: the one given, or those in which the numbers could be a head's.
struct PossibleUnits {
  const UnitName* first = nullptr;
  const UnitName* second = nullptr;  ///< a bust in inches is as many units long as a bare head in centimetres
};

PossibleUnits possible_units(const std::string& name, double extent, std::optional<Unit> given) {
  const auto fitting = fitting_units(extent);
  if (!given) {
    if (fitting.empty())
      throw ModelError(Message::of(
          "%1 is not the size of a head in millimetres, centimetres, metres or inches (its largest extent is %2); choose a mesh of a head, or say the unit.",
          name, geometry::number(extent, 4)));
    return {fitting[0], fitting.size() > 1 ? fitting[1] : nullptr};
  }
  const auto unit = std::find_if(unit_names().begin(), unit_names().end(),
                                 [&](const UnitName& u) { return u.unit == *given; });
  if (!fitting.empty() && std::find(fitting.begin(), fitting.end(), &*unit) == fitting.end())
    throw ModelError(
        Message::of("%1 is not the size of a head in %2 (its largest extent would be %3 cm); %4 would fit.",
                    name, unit->name, geometry::number(extent * unit->mm / 10, 2), fitting[0]->name));
  return {&*unit, nullptr};
}

/// How well a head of an adult's size fits into the skin with its numbers times `factor`, mm; nothing if no
/// head can be made out.
std::optional<double> misfit_of_head(const geometry::Surface& skin, double factor) {
  std::vector<Vector3d> scaled = skin.vertices();
  for (Vector3d& v : scaled) v *= factor;
  try {
    return geometry::guess_fiducials(generic_head(), skin.moved(std::move(scaled))).misfit_mm;
  } catch (const geometry::GeometryError&) {
    return {};
  }
}

/// Settles the unit of a skin that stands in the first of two possible ones, and says what was taken.
geometry::Surface in_likelier_unit(const geometry::Surface& skin, const PossibleUnits& units, double extent,
                                   std::vector<Message>& notes) {
  const UnitName* taken = units.first;
  geometry::Surface settled = skin;
  if (units.second != nullptr) {
    const double factor = units.second->mm / units.first->mm;
    const auto first = misfit_of_head(skin, 1), second = misfit_of_head(skin, factor);
    if (second && (!first || *second < *first)) {
      taken = units.second;
      std::vector<Vector3d> scaled = skin.vertices();
      for (Vector3d& v : scaled) v *= factor;
      settled = skin.moved(std::move(scaled));
    }
    const Message& other = (taken == units.first ? units.second : units.first)->name;
    const auto long_cm = geometry::number(extent * taken->mm / 10);
    notes.insert(
        notes.begin(),
        first && second
            ? Message::of(
                  "Took the numbers in the file for %1, in which it is %2 cm at its largest extent; a head of an adult's size was made out so, in %3 less well.",
                  taken->name, long_cm, other)
        : first || second
            ? Message::of(
                  "Took the numbers in the file for %1, in which it is %2 cm at its largest extent; a head of an adult's size was made out so, in %3 none.",
                  taken->name, long_cm, other)
            : Message::of(
                  "Took the numbers in the file for %1, in which it is %2 cm at its largest extent; %3 would fit too, so compare a tape's length.",
                  taken->name, long_cm, other));
    return settled;
  }
  notes.insert(notes.begin(),
               Message::of("Took the numbers in the file for %1, in which it is %2 cm at its largest extent.",
                           taken->name, geometry::number(extent * taken->mm / 10)));
  return settled;
}

void check_size(const std::string& name, const std::vector<Vector3d>& vertices) {
  const double thin = thinnest_extent(vertices);
  if (thin < thinnest_mm)
    throw ModelError(
        Message::of("%1 is flat (only %2 mm thick); choose a mesh of a head.", name, geometry::number(thin)));
  const double diagonal = extent_of(vertices).norm();
  if (diagonal < smallest_diagonal_mm || diagonal > largest_diagonal_mm)
    throw ModelError(Message::of(
        "%1 is not the size of a head (%2 cm from corner to corner, where %3 to %4 cm would do); check the unit or choose another mesh.",
        name, geometry::number(diagonal / 10), geometry::number(smallest_diagonal_mm / 10),
        geometry::number(largest_diagonal_mm / 10)));
}

void note_holes(const geometry::Surface& skin, std::vector<Message>& notes) {
  if (skin.is_closed()) return;
  double longest = 0;
  for (const auto& loop : skin.borders()) {
    double around = 0;
    for (std::size_t i = 0; i < loop.size(); ++i)
      around += (skin.vertex(loop[(i + 1) % loop.size()]) - skin.vertex(loop[i])).norm();
    longest = std::max(longest, around);
  }
  const std::size_t count = skin.borders().size();
  notes.push_back(count == 1 ? Message::of("The skin has one hole, %1 mm around.", geometry::number(longest))
                             : Message::of("The skin has %1 holes, the largest %2 mm around.", count,
                                           geometry::number(longest)));
}

}  // namespace

SkinImport read_mesh(const fs::path& file, std::optional<Unit> unit, const Progress& progress) {
  const auto tell = [&](const Message& what, double fraction) {
    if (progress) progress(what, fraction);
  };
  const std::string name = file.string();
  tell(Message::of("reading the mesh"), 0);
  Mesh mesh = read_triangle_soup(file);
  tell(Message::of("joining triangles"), 0.4);
  merge_equal_vertices(mesh);
  std::vector<Message> notes;
  tell(Message::of("checking the mesh"), 0.6);
  std::optional<geometry::Surface> sound = skin_as_it_stands(mesh);
  const double extent = extent_of(sound ? mesh.vertices : largest_piece(mesh).mesh.vertices).maxCoeff();
  const PossibleUnits units = possible_units(name, extent, unit);
  for (Vector3d& v : mesh.vertices) v *= units.first->mm;
  tell(Message::of("checking the mesh"), 0.7);
  if (sound && has_close_vertices(mesh.vertices)) sound.reset();
  if (sound)
    sound = sound->moved(std::move(mesh.vertices));
  else
    mesh = repair_mesh(std::move(mesh), name, notes);
  try {
    geometry::Surface skin =
        sound ? std::move(*sound) : geometry::Surface(std::move(mesh.vertices), std::move(mesh.triangles));
    if (!unit) skin = in_likelier_unit(skin, units, extent, notes);
    check_size(name, skin.vertices());
    constexpr double small_hole_mm = 60;  // around; about 2 cm across
    skin = close_small_holes(skin, small_hole_mm, notes);
    const auto thinning = [&](double part) {
      tell(Message::of("thinning out the triangles"), 0.75 + 0.15 * part);
    };
    thinning(0);
    skin = thin_to_size(skin, name, notes, thinning);
    tell(Message::of("looking for shoulders"), 0.9);
    skin = cut_shoulders(skin, notes);
    note_roughness(skin, notes);
    note_holes(skin, notes);
    tell(Message::of("checking the mesh"), 1);
    return {std::move(skin), std::move(notes)};
  } catch (const geometry::GeometryError& error) {
    throw ModelError(
        Message::of("%1 could not be made into a skin (%2); repair the mesh in the program that made it.",
                    name, error.message()));
  }
}

void write_ply(const fs::path& file, const geometry::Surface& skin) {
  std::string bytes = "ply\nformat binary_little_endian 1.0\n" + std::string(own_ply_comment) +
                      "\nelement vertex " + std::to_string(skin.vertices().size()) +
                      "\nproperty double x\nproperty double y\nproperty double z\nelement face " +
                      std::to_string(skin.triangles().size()) +
                      "\nproperty list uchar int vertex_indices\nend_header\n";
  const auto put = [&](auto number) {
    std::array<char, sizeof(number)> raw{};
    std::memcpy(raw.data(), &number, sizeof(number));
    if constexpr (std::endian::native == std::endian::big) std::reverse(raw.begin(), raw.end());
    bytes.append(raw.data(), raw.size());
  };
  bytes.reserve(bytes.size() + 24 * skin.vertices().size() + 13 * skin.triangles().size());
  for (const Vector3d& v : skin.vertices())
    for (int k = 0; k < 3; ++k) put(v[k]);
  for (const Triangle& t : skin.triangles()) {
    put(std::uint8_t{3});
    for (const int corner : t) put(static_cast<std::int32_t>(corner));
  }
  write_whole(file, bytes);
}

}  // namespace scalpmark::models
