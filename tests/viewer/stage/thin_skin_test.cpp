#include <algorithm>
#include <catch2/catch.hpp>

#include "models/cases/case_file.h"
#include "models/cases/case_head.h"
#include "models/heads/load_head.h"
#include "viewer/stage/drawing/skin_mesh.h"

using namespace scalpmark;

namespace {

const std::string demo = SCALPMARK_SOURCE_DIR "/models/demo/";

double farthest_mm(const geometry::Surface& of, const geometry::Surface& from) {
  double most = 0;
  for (const auto& v : of.vertices()) most = std::max(most, (from.position(from.closest(v)) - v).norm());
  return most;
}

}  // namespace

TEST_CASE("what is drawn of the head in motion lies on the head, so that marks stay on it") {
  // Marks are drawn 3 mm nearer to the eye than the skin they lie on; half of that keeps them in sight. On an
  // MRI's skin the folds of the ears are thinned most.
  const auto [file, most_mm] =
      GENERATE(table<std::string, double>({{"bench-head.json", 1}, {"template-mri.json", 1.5}}));
  CAPTURE(file);
  const auto loaded = models::load_head(models::read_case(demo + file));
  const geometry::Surface& skin = loaded.head.skin();
  const auto thin = viewer::thin_skin(skin);
  REQUIRE(thin);
  CHECK(5 * thin->triangles().size() < skin.triangles().size());
  CHECK(farthest_mm(skin, *thin) < most_mm);
  CHECK(farthest_mm(*thin, skin) < most_mm);
}
