#pragma once

#include <QLockFile>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "models/cases/case_file.h"

namespace scalpmark::window {

/// A case that a program that ended unexpectedly left behind.
struct Leftover {
  models::CaseFile case_file;
  QString file;     ///< the case file it belongs to; empty when it was never saved
  QString written;  ///< date and time, for people
  QString path;     ///< of the recovery file
};

/// A copy of the case in work, kept beside the program's own data until the case is saved, so that a crash or
/// a power cut costs no more than a few seconds of work. Written whole or not at all, readable by its owner
/// only.
class Recovery {
public:
  /// `folder` is made when first needed.
  explicit Recovery(QString folder);
  ~Recovery();
  Recovery(const Recovery&) = delete;
  Recovery& operator=(const Recovery&) = delete;

  /// Refusals (models::ModelError) are passed on.
  void keep(const models::CaseFile& case_file, const QString& file);
  void forget();

  /// What other runs left behind that run no more, newest first. Unreadable leftovers are passed over.
  [[nodiscard]] std::vector<Leftover> leftovers() const;
  /// Throws a leftover away.
  static void discard(const Leftover& leftover);

  /// Where the program's own data are.
  [[nodiscard]] static QString usual_folder();

private:
  QString folder_, path_;
  std::unique_ptr<QLockFile> lock_;
};

}  // namespace scalpmark::window
