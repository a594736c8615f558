// Makes the generic head while the program is built, so that the program itself loads it at once.
// usage: make_generic_head OUTPUT.cpp

#include <cmath>
#include <fstream>
#include <iostream>

#include "models/generic/compiled_in.h"
#include "models/generic/skin_mesh.h"

using namespace scalpmark::models::generic;

int main(int argc, char** argv) {
  if (argc != 2) {
    std::cerr << "usage: make_generic_head OUTPUT.cpp\n";
    return 2;
  }
  const HalfMesh half = mesh_right_half();
  std::ofstream out(argv[1]);
  out << "#include \"models/generic/compiled_in.h\"\n\nnamespace {\n\nconstexpr int coordinates[] = {\n";
  for (const auto& v : half.vertices)
    out << std::lround(v.x() / compiled_in_unit_mm) << ',' << std::lround(v.y() / compiled_in_unit_mm) << ','
        << std::lround(v.z() / compiled_in_unit_mm) << ",\n";
  out << "};\n\nconstexpr int corners[] = {\n";
  for (const auto& [a, b, c] : half.triangles) out << a << ',' << b << ',' << c << ",\n";
  out << "};\n\n}  // namespace\n\nnamespace scalpmark::models::generic {\n\n"
      << "const CompiledIn& compiled_in() {\n  static constexpr CompiledIn kept{" << half.vertices.size()
      << ", " << half.triangles.size() << ", coordinates, corners, " << half.nasion << ", " << half.inion
      << ", " << half.right_tragus << "};\n  return kept;\n}\n\n}  // namespace scalpmark::models::generic\n";
  if (!out.flush()) {
    std::cerr << "Cannot write " << argv[1] << "; check the folder and the free space.\n";
    return 1;
  }
  return 0;
}
