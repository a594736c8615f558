#include "viewer/page/page_head.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "geometry/plan/plan_cortex.h"
#include "geometry/plan/solve.h"
#include "models/brain/add_cortex.h"
#include "models/heads/built_in_head.h"
#include "models/meshes/thin_scan.h"
#include "models/meshes/thin_triangles.h"
#include "viewer/page/kernel/skin_bytes.h"
#include "viewer/words/error.h"
#include "viewer/words/head_text.h"
#include "viewer/words/numbers.h"
#include "viewer/words/words.h"

namespace scalpmark::viewer {

using Eigen::Vector3d;
using geometry::Message;
using geometry::TapeDistances;

namespace {

geometry::Surface thinned(const geometry::Surface& skin, std::size_t most) {
  models::Mesh mesh{skin.vertices(), skin.triangles()};
  if (mesh.triangles.size() > most)
    mesh = skin.is_closed() ? models::thin_triangles(std::move(mesh), most) : models::thin_scan(mesh, most);
  return {std::move(mesh.vertices), std::move(mesh.triangles)};
}

/// By how much two plans' tapes to the treatment's marks differ at most.
double most_apart_mm(const geometry::Placement& a, const geometry::Placement& b) {
  double most = 0;
  const auto compare = [&](const std::optional<geometry::TapeFrom>& x,
                           const std::optional<geometry::TapeFrom>& y) {
    using From = geometry::TapeFrom;
    if (!x || !y) return;
    for (double From::*one :
         {&From::vertex_mm, &From::nasion_mm, &From::left_tragus_mm, &From::right_tragus_mm})
      most = std::max(most, std::abs((*x).*one - (*y).*one));
  };
  compare(a.pulse_tape, b.pulse_tape);
  compare(a.edge_mark_tape, b.edge_mark_tape);
  return most;
}

/// Nothing of a course of visits, and no path of somebody's folders, leaves with a page.
models::CaseFile without_visits(const models::CaseFile& case_file) {
  models::CaseFile bare = case_file;
  bare.the_case.visits = {};
  bare.folder.clear();
  bare.notes.clear();
  if (bare.head.kind != models::HeadKind::generic) bare.head.file = "page";
  return bare;
}

HeadOfPage on_generic_head(HeadOfPage page, const geometry::TapeMeasures& tapes, bool with_brain,
                           const models::Progress& progress) {
  page.file.head = {};
  page.file.the_case.tape_mm = {tapes.nasion_inion_mm, tapes.tragus_tragus_mm, tapes.circumference_mm};
  page.loaded = models::built_in_head(page.file.the_case.tape_mm);
  if (with_brain) models::add_cortex(page.loaded, {}, progress);
  page.plan =
      geometry::with_cortex(geometry::solve(page.loaded.head, page.file.the_case, TapeDistances::each_path),
                            page.loaded.cortex.get());
  page.drawn = thinned(page.loaded.head.skin(), most_drawn_of_generic);
  page.said = words(Words::tr(
      "This is a drawing of a head, scaled to the tapes of the person's head; it is not that person, and "
      "places on it are a few millimetres off those on that head."));
  return page;
}

}  // namespace

geometry::Surface scalp_of(const geometry::Head& head) {
  constexpr double over_nasion_mm = 25, over_tragi_mm = 45;
  const geometry::HeadAxes& axes = head.axes();
  const geometry::Fiducials& at = head.fiducials().at;
  const auto over = [&](const Vector3d& p, double mm) -> Vector3d { return p + mm * axes.up; };
  const Vector3d nasion = over(at.nasion, over_nasion_mm), left = over(at.left_tragus, over_tragi_mm),
                 right = over(at.right_tragus, over_tragi_mm);
  Vector3d up = (right - left).cross(nasion - left).normalized();
  if (up.dot(axes.up) < 0) up = -up;
  models::Mesh mesh{head.skin().vertices(), head.skin().triangles()};
  std::vector<char> drop(mesh.triangles.size(), 0);
  for (std::size_t f = 0; f < mesh.triangles.size(); ++f)
    for (const int corner : mesh.triangles[f])
      if (up.dot(mesh.vertices[static_cast<std::size_t>(corner)] - left) < 0) drop[f] = 1;
  models::drop_if(mesh, drop);
  models::drop_unused_vertices(mesh);
  return {std::move(mesh.vertices), std::move(mesh.triangles)};
}

HeadOfPage head_of_page(const models::CaseFile& case_file, const models::LoadedHead& loaded,
                        const geometry::Plan& plan, PageHead head, const models::Progress& progress) {
  HeadOfPage page{without_visits(case_file), loaded, plan, loaded.head.skin(), true, "", ""};
  if (case_file.head.kind == models::HeadKind::generic) {
    page.drawn = thinned(page.drawn, most_drawn_of_generic);
    page.said = head_in_words(case_file, loaded);
    return page;
  }
  if (head == PageHead::generic)
    return on_generic_head(std::move(page), plan.tapes, loaded.cortex != nullptr, progress);
  if (progress) progress(Message::of("Thinning the skin for a page"), 0);
  if (head == PageHead::scalp) {
    page.drawn = on_whole_micrometres(thinned(scalp_of(loaded.head), most_drawn));
    page.for_kernel = false;
    page.said =
        words(Words::tr("This is the scalp above brow and ears of a person's head, made from a scan; the "
                        "face and the ears are not in this page."));
    return page;
  }
  page.drawn = on_whole_micrometres(thinned(loaded.head.skin(), most_drawn));
  page.loaded.head = geometry::Head(page.drawn, *page.file.head.fiducials);
  page.said =
      words(Words::tr("This is a picture of a person's head, made from a scan. It shows that person's face: "
                      "keep this page as you keep the scan."));
  const geometry::Plan again =
      geometry::solve(page.loaded.head, page.file.the_case, TapeDistances::treatment_alone);
  page.how_far =
      words(Words::tr("The skin is thinned for this page. Tapes to a coil moved here agree with those of "
                      "the whole scan within %1."),
            {small_length(std::max(0.1, most_apart_mm(plan.treatment, again.treatment)))});
  return page;
}

}  // namespace scalpmark::viewer
