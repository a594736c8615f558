#include "viewer/window/jobs/head_job.h"

#include <utility>

#include "geometry/plan/plan_cortex.h"
#include "geometry/plan/settings.h"
#include "geometry/plan/solve.h"
#include "models/brain/add_cortex.h"
#include "models/cases/case_head.h"
#include "models/heads/kept_skins.h"
#include "models/heads/own_program.h"
#include "models/heads/skin_reading.h"
#include "viewer/stage/drawing/skin_mesh.h"
#include "viewer/words/words.h"

namespace scalpmark::window {

std::filesystem::path head_path(const models::HeadSource& source, const std::filesystem::path& folder) {
  return source.file.is_absolute() ? source.file : folder / source.file;
}

void HeadJob::finish(const models::LoadedHead& on, const models::CaseFile& case_file) {
  tell(tr("Working out tape distances"), 0.75);
  auto plan = std::make_shared<const geometry::Plan>(geometry::with_cortex(
      geometry::solve(on.head, case_file.the_case, geometry::TapeDistances::each_path), on.cortex.get()));
  hand_over([this, plan = std::move(plan), case_file] {
    plan_ = plan;
    case_file_ = case_file;
    emit measured();
  });
  if (thin_) return;
  tell(tr("Getting the head ready to be turned"), 0.9);
  thin_ = viewer::thin_skin(on.head.skin());
  tell(tr("Ready"), 1);
}

void HeadJob::load(const models::CaseFile& case_file, std::optional<KnownSkin> known) {
  run([this, case_file, known = std::move(known)] {
    // A case that cannot be solved on any head is refused before seconds go into loading one.
    geometry::check_settings(case_file.the_case);
    std::shared_ptr<const models::LoadedHead> head;
    if (known && case_file.head.fiducials) {
      tell(tr("Laying the tapes"), 0.1);
      head = std::make_shared<models::LoadedHead>(models::LoadedHead{
          geometry::Head(known->skin, *case_file.head.fiducials), known->description, known->notes});
    } else {
      head = std::make_shared<models::LoadedHead>(models::load_head(
          case_file,
          [this](const geometry::Message& what, double fraction) {
            tell(viewer::translated(what), 0.7 * fraction);
          },
          models::read_once(models::read_apart(models::own_program()))));
    }
    tell(tr("Laying the coil"), 0.72);
    (void)geometry::solve(head->head, case_file.the_case, geometry::TapeDistances::left_out);
    hand_over([this, head] {
      head_ = head;
      emit laid();
    });
    finish(*head, case_file);
  });
}

void HeadJob::measure(std::shared_ptr<const models::LoadedHead> head, const models::CaseFile& case_file,
                      const std::optional<geometry::Surface>& thin) {
  head_ = std::move(head);
  thin_ = thin;
  run([this, head = head_, case_file] { finish(*head, case_file); });
}

void HeadJob::work_out_fields(std::shared_ptr<const models::LoadedHead> head) {
  head_ = std::move(head);
  run([this, head = head_] {
    tell(tr("Laying tapes over the whole head"), 0.5);
    (void)head->head.fields([this] { stop_if_cancelled(); });
  });
}

void HeadJob::bring_cortex(std::shared_ptr<const models::LoadedHead> head,
                           const models::TemplateFiles& files) {
  head_ = std::move(head);
  brings_cortex_ = true;
  run([this, head = head_, files] {
    // One text all along, which a patient may read; only the first time is there time to read it.
    const QString what = tr("Laying the brain under the skin");
    tell(what, 0.1);
    models::LoadedHead with{head->head, head->description, {}};
    models::add_cortex(with, files,
                       [&](const geometry::Message&, double fraction) { tell(what, 0.9 * fraction); });
    cortex_notes_ = std::exchange(with.notes, head->notes);
    tell(what, 1);
    if (with.cortex) with_cortex_ = std::make_shared<const models::LoadedHead>(std::move(with));
  });
}

void HeadJob::read_skin(const models::HeadSource& source, const std::filesystem::path& folder) {
  run([this, source, folder] {
    const std::filesystem::path file = head_path(source, folder);
    const models::Progress progress = [this](const geometry::Message& what, double fraction) {
      tell(viewer::translated(what), fraction);
    };
    models::SkinImport read = models::read_once(models::read_apart(models::own_program()))(
        {source.kind, file, source.unit}, progress);
    read.skin.prepare();
    tell(tr("Ready"), 1);
    skin_ = std::move(read);
  });
}

}  // namespace scalpmark::window
