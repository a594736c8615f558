#pragma once

#include <memory>
#include <optional>

#include "geometry/base/message.h"
#include "geometry/plan/plan.h"
#include "models/brain/template_brain.h"
#include "models/cases/case_file.h"
#include "models/heads/load_head.h"
#include "models/meshes/skin_import.h"
#include "viewer/window/jobs/background_work.h"

namespace scalpmark::window {

/// A skin that was read before, so that only its fiducials have to be placed anew.
struct KnownSkin {
  geometry::Surface skin;
  geometry::Message description;
  std::vector<geometry::Message> notes;
};

/// Loads a head (or a bare skin). One job per object.
class HeadJob : public BackgroundWork {
  Q_OBJECT
public:
  using BackgroundWork::BackgroundWork;
  ~HeadJob() override { stop(); }

  /// Loads the case's head and solves without tape distances: `laid`. Then solves with them: `measured`. Then
  /// works out what quick drawing wants: `finished`. With a `known` skin the head's file is not read again.
  void load(const models::CaseFile& case_file, std::optional<KnownSkin> known = {});
  /// The case on a head that is loaded: `measured`, and `finished`. A skin already thinned is taken over.
  void measure(std::shared_ptr<const models::LoadedHead> head, const models::CaseFile& case_file,
               const std::optional<geometry::Surface>& thin);
  /// The head's distance fields, with which tape distances follow the coil at once: seconds on a large head.
  void work_out_fields(std::shared_ptr<const models::LoadedHead> head);
  /// The template's brain under the head: `finished`, with or without. The first time on a computer it is
  /// made, which takes seconds.
  void bring_cortex(std::shared_ptr<const models::LoadedHead> head, const models::TemplateFiles& files);
  [[nodiscard]] bool brings_cortex() const { return brings_cortex_; }
  /// Reads a skin whose fiducials nobody has placed yet.
  void read_skin(const models::HeadSource& source, const std::filesystem::path& folder);

  [[nodiscard]] const std::shared_ptr<const models::LoadedHead>& head() const { return head_; }
  /// The plan with its tape distances, once `measured`, and the case it is of.
  [[nodiscard]] const std::shared_ptr<const geometry::Plan>& plan() const { return plan_; }
  [[nodiscard]] const models::CaseFile& case_file() const { return case_file_; }
  /// The head's skin thinned for drawing in motion, once `finished` (see viewer/stage/drawing/skin_mesh.h).
  [[nodiscard]] const std::optional<geometry::Surface>& thin() const { return thin_; }
  [[nodiscard]] const std::optional<models::SkinImport>& skin() const { return skin_; }
  /// The head with its cortex, null where there is none, and the sentences that go with either.
  [[nodiscard]] std::shared_ptr<const models::LoadedHead> with_cortex() const { return with_cortex_; }
  [[nodiscard]] const std::vector<geometry::Message>& cortex_notes() const { return cortex_notes_; }

signals:
  void laid();
  void measured();

private:
  /// In the thread: the plan, then the thin skin.
  void finish(const models::LoadedHead& on, const models::CaseFile& case_file);

  std::shared_ptr<const models::LoadedHead> head_;
  std::shared_ptr<const geometry::Plan> plan_;
  models::CaseFile case_file_;
  std::optional<geometry::Surface> thin_;
  std::optional<models::SkinImport> skin_;
  std::shared_ptr<const models::LoadedHead> with_cortex_;
  std::vector<geometry::Message> cortex_notes_;
  bool brings_cortex_ = false;
};

/// The file of a head source, with its folder.
[[nodiscard]] std::filesystem::path head_path(const models::HeadSource& source,
                                              const std::filesystem::path& folder);

}  // namespace scalpmark::window
