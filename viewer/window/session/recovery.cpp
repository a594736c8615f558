#include "viewer/window/session/recovery.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <QStandardPaths>
#include <QUuid>
#include <filesystem>

#include "geometry/base/message.h"
#include "models/files/error.h"
#include "models/files/safe_file.h"

namespace scalpmark::window {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t largest_leftover =
    24'000'000;  // bytes; a case is at most 8 MB, and its quotes are doubled

std::optional<Leftover> read_leftover(const QString& path) {
  try {
    const std::string bytes = models::read_whole(path.toStdString(), largest_leftover);
    const QJsonObject top = QJsonDocument::fromJson(QByteArray::fromStdString(bytes)).object();
    if (top.value("format").toString() != QLatin1String("scalpmark-recovery")) return {};
    Leftover leftover;
    leftover.case_file =
        models::parse_case(top.value("case").toString().toStdString(),
                           fs::path(top.value("folder").toString().toStdString()), path.toStdString());
    leftover.file = top.value("file").toString();
    leftover.written = QLocale().toString(QFileInfo(path).lastModified(), QLocale::ShortFormat);
    leftover.path = path;
    return leftover;
  } catch (const std::exception&) {
    return {};  // a leftover that cannot be read helps nobody; it must not keep the program from starting
  }
}

}  // namespace

Recovery::Recovery(QString folder)
    : folder_(std::move(folder)),
      path_(folder_ + QStringLiteral("/") + QUuid::createUuid().toString(QUuid::WithoutBraces) +
            QStringLiteral(".json")) {}

Recovery::~Recovery() {
  forget();
}

void Recovery::keep(const models::CaseFile& case_file, const QString& file) {
  if (!QDir().mkpath(folder_))
    throw models::ModelError(geometry::Message::of(
        "The folder %1 cannot be made, so nothing is kept in case of a crash; save the case yourself.",
        folder_.toStdString()));
  if (!lock_) {
    lock_ = std::make_unique<QLockFile>(path_ + QStringLiteral(".lock"));
    lock_->setStaleLockTime(0);  // stale when its program runs no more, however old
    lock_->tryLock(0);
  }
  const QJsonObject top{{"format", "scalpmark-recovery"},
                        {"version", 1},
                        {"file", file},
                        {"folder", QString::fromStdString((fs::current_path() / case_file.folder).string())},
                        {"case", QString::fromStdString(models::case_json(case_file))}};
  models::write_whole(path_.toStdString(), QJsonDocument(top).toJson().toStdString());
}

void Recovery::forget() {
  QFile::remove(path_);
  lock_.reset();
}

std::vector<Leftover> Recovery::leftovers() const {
  std::vector<Leftover> found;
  const QDir folder(folder_);
  for (const QFileInfo& info : folder.entryInfoList({QStringLiteral("*.json")}, QDir::Files, QDir::Time)) {
    if (info.absoluteFilePath() == QFileInfo(path_).absoluteFilePath()) continue;
    QLockFile lock(info.absoluteFilePath() + QStringLiteral(".lock"));
    lock.setStaleLockTime(0);
    if (!lock.tryLock(0)) continue;  // its program still runs
    if (auto leftover = read_leftover(info.absoluteFilePath())) found.push_back(std::move(*leftover));
  }
  return found;
}

void Recovery::discard(const Leftover& leftover) {
  QFile::remove(leftover.path);
  QFile::remove(leftover.path + QStringLiteral(".lock"));
}

QString Recovery::usual_folder() {
  return QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/recovery");
}

}  // namespace scalpmark::window
