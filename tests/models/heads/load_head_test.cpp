#include "models/heads/load_head.h"

#include <catch2/catch.hpp>

#include "geometry/plan/solve.h"
#include "models/cases/case_head.h"
#include "models/files/error.h"
#include "models/generic/generic_head.h"
#include "tests/support/mesh_writers.h"
#include "tests/support/sentence.h"
#include "tests/support/shapes.h"
#include "tests/support/temporary_folder.h"

using namespace scalpmark;
using tests::TemporaryFolder;

namespace {

models::CaseFile mesh_case(const TemporaryFolder& folder) {
  models::CaseFile kept = models::default_case();
  kept.head.kind = models::HeadKind::mesh;
  kept.head.file = "head.stl";
  kept.head.fiducials = geometry::Fiducials{{0, 95, 0}, {0, -95, 0}, {-75, 0, 0}, {75, 0, 0}};
  kept.folder = folder.path();
  return kept;
}

}  // namespace

TEST_CASE("the demo case on the generic head comes out with the tapes entered") {
  const auto kept = models::read_case(std::string(SCALPMARK_SOURCE_DIR) + "/models/demo/bench-head.json");
  const auto loaded = models::load_head(kept);
  CHECK(loaded.head.tapes().nasion_inion_mm == Approx(*kept.the_case.tape_mm.nasion_inion_mm).margin(0.1));
  CHECK(loaded.head.tapes().tragus_tragus_mm == Approx(*kept.the_case.tape_mm.tragus_tragus_mm).margin(0.1));
  CHECK(loaded.head.tapes().circumference_mm == Approx(*kept.the_case.tape_mm.circumference_mm).margin(0.1));
  CHECK(english(loaded.description) == "generic head, scaled to the tapes");
}

TEST_CASE("a mesh is found from the folder of its case, with the unit inferred and said", "[slow]") {
  const TemporaryFolder folder;
  const tests::RawMesh head(tests::sphere(100, 5, {0.75, 0.95, 0.85}));
  tests::write_bytes(folder / "head.stl", tests::stl_bytes(head.times(0.1)));
  const auto loaded = models::load_head(mesh_case(folder));
  CHECK(english(loaded.description) == "scan head.stl");
  CHECK(loaded.notes.size() == 1);
  CHECK(loaded.head.skin().triangles().size() == head.triangles.size());
  CHECK(loaded.head.fiducials().at.nasion.y() == Approx(95).margin(0.01));
}

TEST_CASE("a head whose file is missing or whose points are not placed is refused") {
  const TemporaryFolder folder;
  auto kept = mesh_case(folder);
  const auto refused = [&] {
    return tests::sentence_of<models::ModelError>([&] { (void)models::load_head(kept); });
  };
  CHECK(refused().find("head.stl does not exist") != std::string::npos);
  kept.head.fiducials.reset();
  CHECK(tests::is_sentence(refused()));
  CHECK(refused().find("place the four points first") != std::string::npos);
}

TEST_CASE("the same head as OBJ, PLY, STL and GLB gives the same plan") {
  const TemporaryFolder folder;
  const geometry::Head& generic = models::generic_head();
  const tests::RawMesh head(generic.skin());
  const std::vector<std::pair<std::string, std::string>> files{{"head.obj", tests::obj_text(head)},
                                                               {"head.ply", tests::ply_text(head)},
                                                               {"head.stl", tests::stl_bytes(head)},
                                                               {"head.glb", tests::glb_bytes(head)}};
  std::optional<geometry::Plan> first;
  for (const auto& [name, bytes] : files) {
    CAPTURE(name);
    tests::write_bytes(folder / name, bytes);
    models::CaseFile kept = mesh_case(folder);
    kept.head.file = name;
    kept.head.unit = models::Unit::millimetre;
    kept.head.fiducials = generic.fiducials().at;
    const geometry::Plan plan =
        geometry::solve(models::load_head(kept).head, kept.the_case, geometry::TapeDistances::left_out);
    if (!first) first = plan;
    // Files hold single floats, or nine digits: a hundredth of a micron on a head.
    for (size_t i = 0; i < plan.landmarks.size(); ++i)
      CHECK((plan.landmarks[i].at - first->landmarks[i].at).norm() < 1e-3);
    for (size_t i = 0; i < plan.grid.size(); ++i) {
      CHECK((plan.grid[i].placement.pulse - first->grid[i].placement.pulse).norm() < 5e-3);
      CHECK((*plan.grid[i].placement.edge_mark.tape - *first->grid[i].placement.edge_mark.tape).norm() <
            5e-3);
    }
    CHECK((plan.treatment.pulse - first->treatment.pulse).norm() < 5e-3);
    CHECK((plan.treatment.edge - first->treatment.edge).norm() < 5e-3);
  }
}
