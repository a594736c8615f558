#pragma once

#include <memory>
#include <optional>

#include "models/case_file.h"
#include "models/load_head.h"
#include "models/skin_import.h"
#include "viewer/window/background_work.h"

namespace scalpmark::window {

/// A skin that was read before, so that only its fiducials have to be placed anew.
struct KnownSkin {
  geometry::Surface skin;
  std::string description;
  std::vector<std::string> notes;
};

/// Loads a head (or a bare skin). One job per object.
class HeadJob : public BackgroundWork {
  Q_OBJECT
public:
  using BackgroundWork::BackgroundWork;
  ~HeadJob() override { stop(); }

  /// Loads the case's head and solves without tape distances: `laid`. Then works out the distances and what
  /// quick drawing wants, which takes seconds on a large head: `finished`. With a `known` skin the head's
  /// file is not read again.
  void load(const models::CaseFile& kept, std::optional<KnownSkin> known = {});
  /// The second half alone, for a head that lacks them.
  void work_out_tapes(std::shared_ptr<const models::LoadedHead> head);
  /// Reads a skin whose fiducials nobody has placed yet.
  void read_skin(const models::HeadSource& source, const std::filesystem::path& folder);

  [[nodiscard]] const std::shared_ptr<const models::LoadedHead>& head() const { return head_; }
  /// The head's skin thinned for drawing in motion, once `finished` (see viewer/stage/skin_mesh.h).
  [[nodiscard]] const std::optional<geometry::Surface>& thin() const { return thin_; }
  [[nodiscard]] const std::optional<models::SkinImport>& skin() const { return skin_; }

signals:
  void laid();

private:
  void finish(const geometry::Head& head);

  std::shared_ptr<const models::LoadedHead> head_;
  std::optional<geometry::Surface> thin_;
  std::optional<models::SkinImport> skin_;
};

/// The file of a head source, with its folder.
[[nodiscard]] std::filesystem::path head_path(const models::HeadSource& source,
                                              const std::filesystem::path& folder);

}  // namespace scalpmark::window
