#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace scalpmark::viewer {

/// Whom a page is for. A patient's holds no technician's data, whatever is looked for in the file.
enum class Face { patient, technician, class_room };
inline constexpr std::array all_faces{Face::patient, Face::technician, Face::class_room};
/// As written on the command line.
[[nodiscard]] constexpr std::string_view name_of(Face face) {
  return face == Face::patient ? "patient" : face == Face::technician ? "technician" : "class";
}

/// Which head a page shows of a case whose head is a scan or an MRI, which has a person's face: that one; the
/// generic head, scaled to the same tapes; or that one's scalp above brow and ears alone.
enum class PageHead { own, generic, scalp };
inline constexpr std::array all_page_heads{PageHead::own, PageHead::generic, PageHead::scalp};
[[nodiscard]] constexpr std::string_view name_of(PageHead head) {
  return head == PageHead::own ? "own" : head == PageHead::generic ? "generic" : "scalp";
}

}  // namespace scalpmark::viewer
