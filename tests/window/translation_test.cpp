#include "viewer/window/translation.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTranslator>
#include <catch2/catch.hpp>

#include "bench.h"

using namespace scalpmark;
using namespace scalpmark::window;

TEST_CASE("a translation that lies there for the locale is used, and without one the texts stay English") {
  QTemporaryDir folder;
  CHECK_FALSE(translate(*qApp, QLocale("de_DE"), {folder.path()}));
  QFile texts(folder.filePath("scalpmark_de.ts"));
  REQUIRE(texts.open(QIODevice::WriteOnly));
  texts.write(R"(<?xml version="1.0" encoding="utf-8"?><!DOCTYPE TS><TS version="2.1" language="de">
    <context><name>scalpmark::window::MainWindow</name>
      <message><source>Explain</source><translation>Zeigen</translation></message>
      <message><source>From above</source><translation>Von oben</translation></message></context>
    <context><name>Lengths</name>
      <message><source>cm</source><translation>Zentimeter</translation></message></context></TS>)");
  texts.close();
  QProcess release;
  release.start("lrelease", {texts.fileName(), "-qm", folder.filePath("scalpmark_de.qm")});
  REQUIRE(release.waitForFinished(60'000));
  REQUIRE(release.exitCode() == 0);
  REQUIRE(translate(*qApp, QLocale("de_AT"), {folder.path()}));
  {
    OpenedWindow opened;
    CHECK(opened.window.mode_button(Mode::explain)->text() == "Zeigen");
    CHECK(opened.window.mode_button(Mode::check)->text() == "Check");  // not translated: as it is
    CHECK(unit_name(LengthUnit::centimetre) == "Zentimeter");
    bool found = false;
    for (const QAction* action : opened.window.findChildren<QAction*>())
      found |= action->text() == "Von oben";
    CHECK(found);
  }
  for (auto* translator : qApp->findChildren<QTranslator*>()) {
    QCoreApplication::removeTranslator(translator);
    delete translator;
  }
  CHECK(unit_name(LengthUnit::centimetre) == "cm");
}

TEST_CASE("every text of the window stands in the file that is handed to translators") {
  // lupdate finds no text that the file lacks, and none under a context that is not looked up.
  QTemporaryDir folder;
  const QString source = QStringLiteral(SCALPMARK_SOURCE_DIR);
  const QString fresh = folder.filePath("scalpmark.ts");
  QProcess update;
  update.start("lupdate", {"-silent", "-locations", "none", "-no-obsolete", "-I", source,
                           source + "/viewer", "-ts", fresh});
  REQUIRE(update.waitForFinished(120'000));
  CHECK(update.readAllStandardError().isEmpty());
  const auto sources = [](const QString& path) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    QStringList lines;
    for (const QString& line : QString::fromUtf8(file.readAll()).split('\n'))
      if (line.contains("<source>") || line.contains("<name>")) lines << line.trimmed();
    lines.sort();  // lupdate adds new texts at the end of their context
    return lines;
  };
  const QStringList kept = sources(source + "/viewer/window/translations/scalpmark.ts");
  CHECK(kept.size() > 300);
  CHECK(sources(fresh) == kept);  // otherwise: ninja -C build translations
}
