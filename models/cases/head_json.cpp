#include "models/cases/head_json.h"

#include <array>
#include <string>

#include "models/files/error.h"

namespace scalpmark::models {

namespace fs = std::filesystem;
using nlohmann::ordered_json;

namespace {

constexpr std::size_t longest_path = 4096;  // characters

constexpr std::array<Choice<HeadKind>, 3> head_kinds{
    {{"generic", HeadKind::generic}, {"mesh", HeadKind::mesh}, {"mri", HeadKind::mri}}};
constexpr std::array<Choice<Unit>, 4> units{
    {{"mm", Unit::millimetre}, {"cm", Unit::centimetre}, {"m", Unit::metre}, {"in", Unit::inch}}};

template <class Value, std::size_t count>
std::string name_among(Value value, const std::array<Choice<Value>, count>& choices) {
  for (const auto& choice : choices)
    if (choice.value == value) return std::string(choice.name);
  throw ModelError(Message::of("The head of the case is none of the kinds known; choose it again."));
}

}  // namespace

HeadSource read_head_source(const JsonGroup& top) {
  const JsonGroup group =
      top.group("head", {"kind", "file", "unit", "nasion", "inion", "left_tragus", "right_tragus"});
  HeadSource head;
  group.require({"kind"});
  group.choice("kind", head_kinds, head.kind);
  if (head.kind == HeadKind::generic) {
    for (const char* key : {"file", "unit", "nasion", "inion", "left_tragus", "right_tragus"})
      if (group.has(key))
        group.refuse(key, Message::of("does not go with the generic head, which has its own"));
    return head;
  }
  group.require({"file", "nasion", "inion", "left_tragus", "right_tragus"});
  std::string file;
  group.text("file", file, longest_path);
  if (file.empty() || file.find('\0') != std::string::npos)
    group.refuse("file", Message::of("must be the name of a file, but is %1", group.shown("file")));
  head.file = file;
  if (group.has("unit")) {
    if (head.kind == HeadKind::mri)
      group.refuse("unit", Message::of("does not go with an mri head, whose file says its own"));
    Unit unit = Unit::millimetre;
    group.choice("unit", units, unit);
    head.unit = unit;
  }
  geometry::Fiducials points;
  group.point("nasion", points.nasion);
  group.point("inion", points.inion);
  group.point("left_tragus", points.left_tragus);
  group.point("right_tragus", points.right_tragus);
  head.fiducials = points;
  return head;
}

ordered_json head_source_json(const HeadSource& head) {
  ordered_json out;
  out["kind"] = name_among(head.kind, head_kinds);
  if (head.kind == HeadKind::generic) return out;
  if (!head.fiducials)
    throw ModelError(Message::of(
        "The head of the case has no nasion, inion and tragi yet, so the case cannot be saved; place them first."));
  out["file"] = head.file.string();
  if (head.unit && head.kind == HeadKind::mesh) out["unit"] = name_among(*head.unit, units);
  const auto point = [](const Eigen::Vector3d& p) { return ordered_json{p.x(), p.y(), p.z()}; };
  out["nasion"] = point(head.fiducials->nasion);
  out["inion"] = point(head.fiducials->inion);
  out["left_tragus"] = point(head.fiducials->left_tragus);
  out["right_tragus"] = point(head.fiducials->right_tragus);
  return out;
}

namespace {

/// An empty folder is the current one.
fs::path whole_path(const fs::path& path) {
  return (path.is_absolute() ? path : fs::current_path() / path).lexically_normal();
}

}  // namespace

fs::path folder_of(const fs::path& file) {
  return whole_path(file).parent_path();
}

HeadSource found_from(const HeadSource& head, const fs::path& from, const fs::path& folder) {
  HeadSource moved = head;
  if (head.kind == HeadKind::generic || !head.file.is_relative() || whole_path(from / "") == folder / "")
    return moved;
  const fs::path head_file = whole_path(from / head.file);
  const fs::path beside = head_file.lexically_relative(folder);
  moved.file = beside.empty() || *beside.begin() == ".." ? head_file : beside;
  return moved;
}

}  // namespace scalpmark::models
