#pragma once

#include <QByteArray>
#include <QString>

namespace scalpmark::window {

/// What a file held when this window last read or wrote it, to tell whether somebody else has changed it
/// since.
class DiskVersion {
public:
  /// The file as it is now; an empty name forgets.
  void remember(const QString& file);
  /// Whether the file remembered holds something else now. Not one that is gone, or another file.
  [[nodiscard]] bool is_changed(const QString& file) const;

private:
  QString file_;
  QByteArray held_;
};

/// A name beside the file's, for another version of it, that is not taken yet: "bench (2).json".
[[nodiscard]] QString free_name_beside(const QString& file);

}  // namespace scalpmark::window
