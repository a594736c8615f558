#pragma once

#include <QObject>
#include <QString>
#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <thread>

#include "geometry/plan.h"
#include "models/case_file.h"
#include "models/load_head.h"
#include "models/skin_import.h"

namespace scalpmark::window {

/// What the worker made of a case: its head, ready for quick solving, and its first plan.
struct SolvedCase {
  std::shared_ptr<const models::LoadedHead> head;
  std::shared_ptr<const geometry::Plan> plan;
};

/// A skin that was read before, so that only its fiducials have to be placed anew.
struct KnownSkin {
  geometry::Surface skin;
  std::string description;
  std::vector<std::string> notes;
};

/// Loads a head (or a bare skin) in a thread of its own, so that the window never freezes. One job per
/// object. The signals arrive in the thread that made the object. A cancelled job falls silent at once; its
/// thread ends at the next report of progress, and the object's end waits for that.
class HeadJob : public QObject {
  Q_OBJECT
public:
  explicit HeadJob(QObject* parent = nullptr) : QObject(parent) {}
  ~HeadJob() override;

  /// Loads the case's head, works out what every solve needs, and solves. With a `known` skin the head's file
  /// is not read again.
  void load(const models::CaseFile& kept, std::optional<KnownSkin> known = {});
  /// Reads a skin whose fiducials nobody has placed yet.
  void read_skin(const models::HeadSource& source, const std::filesystem::path& folder);

  void cancel() { cancelled_ = true; }
  [[nodiscard]] bool is_cancelled() const { return cancelled_; }
  [[nodiscard]] bool is_over() const { return over_; }

  [[nodiscard]] const SolvedCase& solved() const { return solved_; }
  [[nodiscard]] const std::optional<models::SkinImport>& skin() const { return skin_; }

signals:
  void progressed(const QString& what, double fraction);
  void finished();
  void failed(const QString& sentence);

private:
  void run(std::function<void()> work);
  [[nodiscard]] models::Progress progress();

  std::thread thread_;
  std::atomic<bool> cancelled_{false}, over_{false};
  SolvedCase solved_;
  std::optional<models::SkinImport> skin_;
};

/// The file of a head source, with its folder.
[[nodiscard]] std::filesystem::path head_path(const models::HeadSource& source,
                                              const std::filesystem::path& folder);

}  // namespace scalpmark::window
