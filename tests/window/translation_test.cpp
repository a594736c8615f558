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
