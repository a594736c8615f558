#include "viewer/window/head_job.h"

#include "geometry/solve.h"
#include "models/mesh_file.h"
#include "models/mri_file.h"

namespace scalpmark::window {

namespace {

// Thrown through the loader when the user gave up on it; not an error.
struct Cancelled {};

}  // namespace

std::filesystem::path head_path(const models::HeadSource& source, const std::filesystem::path& folder) {
  return source.file.is_absolute() ? source.file : folder / source.file;
}

HeadJob::~HeadJob() {
  cancel();
  if (thread_.joinable()) thread_.join();
}

models::Progress HeadJob::progress() {
  return [this](const std::string& what, double fraction) {
    if (cancelled_) throw Cancelled{};
    const QString text = QString::fromStdString(what);
    QMetaObject::invokeMethod(
        this,
        [this, text, fraction] {
          if (!cancelled_ && !over_) emit progressed(text, fraction);
        },
        Qt::QueuedConnection);
  };
}

void HeadJob::run(std::function<void()> work) {
  thread_ = std::thread([this, work = std::move(work)] {
    QString problem;
    try {
      work();
    } catch (const Cancelled&) {
      cancelled_ = true;
    } catch (const std::exception& error) {
      problem = QString::fromUtf8(error.what());
    }
    QMetaObject::invokeMethod(
        this,
        [this, problem] {
          over_ = true;
          if (cancelled_) return;
          if (problem.isEmpty())
            emit finished();
          else
            emit failed(problem);
        },
        Qt::QueuedConnection);
  });
}

void HeadJob::load(const models::CaseFile& kept, std::optional<KnownSkin> known) {
  run([this, kept, known = std::move(known)] {
    const models::Progress tell = progress();
    // A case that cannot be solved on any head is refused before seconds go into loading one.
    geometry::check_settings(kept.entered);
    std::shared_ptr<const models::LoadedHead> head;
    if (known && kept.head.fiducials) {
      tell(tr("Laying the tapes").toStdString(), 0.1);
      head = std::make_shared<models::LoadedHead>(models::LoadedHead{
          geometry::Head(known->skin, *kept.head.fiducials), known->description, known->notes});
    } else {
      head = std::make_shared<models::LoadedHead>(models::load_head(
          kept, [&](const std::string& what, double fraction) { tell(what, 0.7 * fraction); }));
    }
    tell(tr("Working out tape distances").toStdString(), 0.75);
    (void)head->head.fields();
    tell(tr("Laying the coil").toStdString(), 0.95);
    auto plan = std::make_shared<geometry::Plan>(geometry::solve(head->head, kept.entered));
    tell(tr("Ready").toStdString(), 1);
    solved_ = {head, plan};
  });
}

void HeadJob::read_skin(const models::HeadSource& source, const std::filesystem::path& folder) {
  run([this, source, folder] {
    const std::filesystem::path file = head_path(source, folder);
    const models::Progress tell = progress();
    models::SkinImport read = source.kind == models::HeadKind::mri
                                  ? models::read_mri(file, tell)
                                  : models::read_mesh(file, source.unit, tell);
    read.skin.prepare();
    tell(tr("Ready").toStdString(), 1);
    skin_ = std::move(read);
  });
}

}  // namespace scalpmark::window
