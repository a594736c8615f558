#include "viewer/window/session/disk_version.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>

namespace scalpmark::window {

namespace {

QByteArray digest(const QString& name) {
  QFile file(name);
  if (name.isEmpty() || !file.open(QIODevice::ReadOnly)) return {};
  QCryptographicHash hash(QCryptographicHash::Sha256);
  return hash.addData(&file) ? hash.result() : QByteArray();
}

QString whole_name(const QString& name) {
  return QFileInfo(name).canonicalFilePath();
}

}  // namespace

void DiskVersion::remember(const QString& file) {
  file_ = file.isEmpty() ? QString() : whole_name(file);
  held_ = digest(file);
}

bool DiskVersion::is_changed(const QString& file) const {
  if (file_.isEmpty() || file.isEmpty() || whole_name(file) != file_) return false;
  const QByteArray now = digest(file);
  return !now.isEmpty() && now != held_;
}

QString free_name_beside(const QString& file) {
  const QFileInfo at(file);
  const QString ending = at.suffix().isEmpty() ? QString() : QLatin1Char('.') + at.suffix();
  for (int n = 2;; ++n) {
    QString name =
        at.dir().filePath(QStringLiteral("%1 (%2)%3").arg(at.completeBaseName()).arg(n).arg(ending));
    if (!QFileInfo::exists(name)) return name;
  }
}

}  // namespace scalpmark::window
