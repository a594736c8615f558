<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>Cautions</name>
    <message>
        <source>Training and illustration only; not a navigation or treatment device. Follow the device&apos;s instructions, local codes and the licensed clinician.</source>
        <translation>Nur zur Schulung und Veranschaulichung; kein Navigations- oder Behandlungsgerät. Der Gebrauchsanweisung des Geräts, örtlichen Vorschriften und der approbierten Fachkraft folgen.</translation>
    </message>
    <message>
        <source>&lt;p&gt;&lt;b&gt;For training and illustration only.&lt;/b&gt; Scalpmark is not a navigation or treatment device and is not for treatment decisions.&lt;/p&gt;&lt;p&gt;A licensed prescriber decides site, threshold and dose; the device&apos;s instructions and local codes come first.&lt;/p&gt;&lt;p&gt;Ask before any pulse about:&lt;/p&gt;&lt;ul&gt;&lt;li&gt;metal or implants in or near the head&lt;/li&gt;&lt;li&gt;pacemakers and stimulators&lt;/li&gt;&lt;li&gt;seizures, and drugs that make them more likely&lt;/li&gt;&lt;li&gt;pregnancy&lt;/li&gt;&lt;/ul&gt;&lt;p&gt;Ear protection for patient and staff. Know what to do in a seizure.&lt;/p&gt;&lt;p&gt;A cap and marks without tracking put the pulse about %1 off on average; a tape reads to %2.&lt;/p&gt;</source>
        <translation>&lt;p&gt;&lt;b&gt;Nur zur Schulung und Veranschaulichung.&lt;/b&gt; Scalpmark ist kein Navigations- oder Behandlungsgerät und nicht für Behandlungsentscheidungen bestimmt.&lt;/p&gt;&lt;p&gt;Über Ort, Schwelle und Dosis entscheidet die approbierte verordnende Fachkraft; die Gebrauchsanweisung des Geräts und örtliche Vorschriften gehen vor.&lt;/p&gt;&lt;p&gt;Vor jedem Impuls fragen nach:&lt;/p&gt;&lt;ul&gt;&lt;li&gt;Metall oder Implantaten im Kopf oder in seiner Nähe&lt;/li&gt;&lt;li&gt;Herzschrittmachern und Stimulatoren&lt;/li&gt;&lt;li&gt;Krampfanfällen und Medikamenten oder anderen Substanzen, die sie wahrscheinlicher machen&lt;/li&gt;&lt;li&gt;Schwangerschaft&lt;/li&gt;&lt;/ul&gt;&lt;p&gt;Gehörschutz für Patient und Personal. Wissen, was bei einem Krampfanfall zu tun ist.&lt;/p&gt;&lt;p&gt;Mit Kappe und Marken ohne Tracking liegt der Impuls im Mittel etwa %1 daneben; ein Maßband wird auf %2 genau abgelesen.&lt;/p&gt;</translation>
    </message>
</context>
<context>
    <name>Coils</name>
    <message>
        <source>Angled two-wing coil, 150 degrees between the wings</source>
        <translation>Gewinkelte Zweiflügelspule, 150 Grad zwischen den Flügeln</translation>
    </message>
    <message>
        <source>An angled coil may rest on its wings with its centre clear of the skin.</source>
        <translation>Eine gewinkelte Spule kann auf ihren Flügeln aufliegen, während ihre Mitte von der Haut frei ist.</translation>
    </message>
    <message>
        <source>Figure-of-eight coil, 70 mm</source>
        <translation>Achterspule, 70 mm</translation>
    </message>
    <message>
        <source>Figure-of-eight coil, 90 mm</source>
        <translation>Achterspule, 90 mm</translation>
    </message>
    <message>
        <source>Round coil, 100 mm</source>
        <translation>Rundspule, 100 mm</translation>
    </message>
    <message>
        <source>Under a round coil the field is strongest in a ring under its windings, not under its centre.</source>
        <translation>Unter einer Rundspule ist das Feld in einem Ring unter ihren Wicklungen am stärksten, nicht unter ihrer Mitte.</translation>
    </message>
</context>
<context>
    <name>Dialogs</name>
    <message>
        <source>Unsaved changes</source>
        <translation>Nicht gespeicherte Änderungen</translation>
    </message>
    <message>
        <source>The case has changes that are not saved.</source>
        <translation>Der Fall hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Discard the changes</source>
        <translation>Änderungen verwerfen</translation>
    </message>
    <message>
        <source>Keep working</source>
        <translation>Weiterarbeiten</translation>
    </message>
    <message>
        <source>Unsaved work found</source>
        <translation>Nicht gespeicherte Arbeit gefunden</translation>
    </message>
    <message>
        <source>The program ended unexpectedly on %1 and kept this case: “%2”. Continue with it?</source>
        <translation>Das Programm endete unerwartet am %1 und hat diesen Fall aufgehoben: „%2“. Damit weiterarbeiten?</translation>
    </message>
    <message>
        <source>Continue with it</source>
        <translation>Weiterarbeiten</translation>
    </message>
    <message>
        <source>Discard it</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>Vor dem Beginn</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Gelesen</translation>
    </message>
    <message>
        <source>About Scalpmark</source>
        <translation>Über Scalpmark</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Scalpmark %1&lt;/h3&gt;</source>
        <translation>&lt;h3&gt;Scalpmark %1&lt;/h3&gt;</translation>
    </message>
    <message>
        <source>1 to 6 on the stage, Alt+1 to Alt+6 anywhere</source>
        <translation>1 bis 6 in der 3D-Ansicht, Alt+1 bis Alt+6 überall</translation>
    </message>
    <message>
        <source>Drag the coil</source>
        <translation>Spule ziehen</translation>
    </message>
    <message>
        <source>moves it over the skin</source>
        <translation>verschiebt sie über die Haut</translation>
    </message>
    <message>
        <source>Left, Right; Ctrl and wheel</source>
        <translation>Links, Rechts; Strg und Mausrad</translation>
    </message>
    <message>
        <source>turn the coil by 1° (with Shift 5°)</source>
        <translation>Spule um 1° drehen (mit Umschalt 5°)</translation>
    </message>
    <message>
        <source>Ctrl and arrows</source>
        <translation>Strg und Pfeiltasten</translation>
    </message>
    <message>
        <source>Click a spot of the grid</source>
        <translation>Rasterpunkt anklicken</translation>
    </message>
    <message>
        <source>lays the coil on it</source>
        <translation>legt die Spule dort an</translation>
    </message>
    <message>
        <source>Enter; Ctrl and arrows, placing points</source>
        <translation>Eingabe; Strg und Pfeiltasten, beim Setzen der Punkte</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>puts the coil back, takes an entry back, leaves Explain</source>
        <translation>legt die Spule zurück, nimmt eine Eingabe zurück, verlässt „Erklären“</translation>
    </message>
    <message>
        <source>Drag beside the coil; Alt and arrows</source>
        <translation>Neben der Spule ziehen; Alt und Pfeiltasten</translation>
    </message>
    <message>
        <source>turn the head</source>
        <translation>Kopf drehen</translation>
    </message>
    <message>
        <source>Right drag; Shift and drag</source>
        <translation>Mit rechter Taste ziehen; Umschalt und ziehen</translation>
    </message>
    <message>
        <source>shift the picture</source>
        <translation>Bild verschieben</translation>
    </message>
    <message>
        <source>Wheel; + and -</source>
        <translation>Mausrad; + und -</translation>
    </message>
    <message>
        <source>zoom</source>
        <translation>zoomen</translation>
    </message>
    <message>
        <source>Up, Down in a field</source>
        <translation>Auf, Ab in einem Feld</translation>
    </message>
    <message>
        <source>a little more, a little less</source>
        <translation>etwas mehr, etwas weniger</translation>
    </message>
    <message>
        <source>Ctrl and a step&apos;s heading</source>
        <translation>Strg und Überschrift eines Schritts</translation>
    </message>
    <message>
        <source>opens it and leaves the others open</source>
        <translation>öffnet ihn und lässt die anderen offen</translation>
    </message>
    <message>
        <source>Ctrl+T, Ctrl+H, Ctrl+B</source>
        <translation>Strg+T, Strg+H, Strg+B</translation>
    </message>
    <message>
        <source>lay the coil on the treatment site, the hotspot, the search start</source>
        <translation>Spule am Behandlungsort, am Hotspot, am Suchstart anlegen</translation>
    </message>
    <message>
        <source>Ctrl+Z, Ctrl+Shift+Z</source>
        <translation>Strg+Z, Strg+Umschalt+Z</translation>
    </message>
    <message>
        <source>undo, redo</source>
        <translation>rückgängig machen, wiederholen</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Space; Page Down, Page Up in Teach</source>
        <translation>Leertaste; Bild ab, Bild auf unter „Lehren“</translation>
    </message>
    <message>
        <source>play or stop the lesson; next step, step before</source>
        <translation>Lektion abspielen oder anhalten; nächster Schritt, voriger Schritt</translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <translation>Strg+G</translation>
    </message>
    <message>
        <source>shows the gap under the coil, or leaves it out</source>
        <translation>zeigt den Spalt unter der Spule oder lässt ihn weg</translation>
    </message>
    <message>
        <source>Ctrl+Shift+B</source>
        <translation>Strg+Umschalt+B</translation>
    </message>
    <message>
        <source>looks through the skin at the template&apos;s brain, and back</source>
        <translation>blickt durch die Haut auf das Gehirn der Vorlage und zurück</translation>
    </message>
    <message>
        <source>&lt;p&gt;Built with Qt, VTK, Eigen, Assimp, OpenMesh and nlohmann-json, each under its own licence; on Debian see /usr/share/doc.&lt;/p&gt;</source>
        <translation>&lt;p&gt;Erstellt mit Qt, VTK, Eigen, Assimp, OpenMesh und nlohmann-json, jedes unter seiner eigenen Lizenz; unter Debian siehe /usr/share/doc.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Changed on disk</source>
        <translation>Auf dem Datenträger geändert</translation>
    </message>
    <message>
        <source>%1 was changed by somebody else, or in another window, since it was read here. Both versions can stay.</source>
        <translation>%1 wurde von jemand anderem oder in einem anderen Fenster geändert, seit die Datei hier gelesen wurde. Beide Fassungen können bleiben.</translation>
    </message>
    <message>
        <source>Save mine under another name</source>
        <translation>Meine unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>Save mine here, put the other beside it</source>
        <translation>Meine hier speichern, die andere daneben</translation>
    </message>
    <message>
        <source>Replace a file</source>
        <translation>Datei ersetzen</translation>
    </message>
    <message>
        <source>%1 is there already and holds something else. Replace it?</source>
        <translation>%1 gibt es schon, mit anderem Inhalt. Ersetzen?</translation>
    </message>
    <message>
        <source>Replace it</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Ctrl+Alt+A, Ctrl+Alt+B</source>
        <translation>Strg+Alt+A, Strg+Alt+B</translation>
    </message>
    <message>
        <source>chooses one of several places that fit a mark&apos;s tapes</source>
        <translation>nimmt diese der Stellen, die zu den Bändern einer Marke passen</translation>
    </message>
    <message>
        <source>front, left, right, back, above, straight down on the coil</source>
        <translation>vorn, links, rechts, hinten, oben, senkrecht auf die Spule</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Strg+I</translation>
    </message>
    <message>
        <source>shows the induced field in a round model head, or leaves it out</source>
        <translation>zeigt das induzierte Feld in einem runden Modellkopf oder lässt es weg</translation>
    </message>
    <message>
        <source>0, 1, 2, 3 in Pulses</source>
        <translation>0, 1, 2, 3 unter „Impulse“</translation>
    </message>
    <message>
        <source>Up, Down; Left, Right in Pulses</source>
        <translation>Auf, Ab; Links, Rechts unter „Impulse“</translation>
    </message>
    <message>
        <source>Backspace in Pulses</source>
        <translation>Rücktaste unter „Impulse“</translation>
    </message>
    <message>
        <source>takes the last pulse back</source>
        <translation>nimmt den letzten Impuls zurück</translation>
    </message>
    <message>
        <source>note the answer to a pulse: none, thumb, index finger, other</source>
        <translation>die Antwort auf einen Impuls notieren: keine, Daumen, Zeigefinger, andere</translation>
    </message>
    <message>
        <source>output by a step (with Shift a fine one); previous spot, next spot</source>
        <translation>Leistung um einen Schritt (mit Umschalt um einen feinen); voriger, nächster Rasterpunkt</translation>
    </message>
    <message>
        <source>Ctrl+E, Ctrl+Shift+P, Ctrl+Shift+C</source>
        <translation>Strg+E, Strg+Umschalt+P, Strg+Umschalt+C</translation>
    </message>
    <message>
        <source>save a sheet, save a picture, copy the picture</source>
        <translation>ein Blatt speichern, ein Bild speichern, das Bild kopieren</translation>
    </message>
    <message>
        <source>F11</source>
        <translation>F11</translation>
    </message>
    <message>
        <source>full screen, and back</source>
        <translation>ganzer Bildschirm und zurück</translation>
    </message>
    <message>
        <source>A person&apos;s face</source>
        <translation>Das Gesicht eines Menschen</translation>
    </message>
    <message>
        <source>This head is a scan, and the file will show the person&apos;s face to whoever gets it. A head for a 3D printer that is cut flat above the brow has none. Write the file with the face?</source>
        <translation>Dieser Kopf ist ein Scan, und die Datei zeigt jedem, der sie bekommt, das Gesicht der Person. Ein Kopf für den 3D-Drucker, der über der Braue flach geschnitten ist, hat keines. Die Datei mit dem Gesicht schreiben?</translation>
    </message>
    <message>
        <source>Write it with the face</source>
        <translation>Mit dem Gesicht schreiben</translation>
    </message>
    <message>
        <source>Do not write it</source>
        <translation>Nicht schreiben</translation>
    </message>
    <message>
        <source>move the coil by %1 (with Shift %2)</source>
        <translation>Spule um %1 verschieben (mit Umschalt %2)</translation>
    </message>
    <message>
        <source>sets the point in the middle of the picture; moves it by %1</source>
        <translation>setzt den Punkt in die Bildmitte; verschiebt ihn um %1</translation>
    </message>
    <message>
        <source>F, T, P, L, X, C in Practise</source>
        <translation>F, T, P, L, X, C beim Üben</translation>
    </message>
    <message>
        <source>take the finger, the tape, the pencil for a point, a line or a cross, the coil</source>
        <translation>nehmen den Finger, das Band, den Stift für einen Punkt, einen Strich oder ein Kreuz, die Spule</translation>
    </message>
    <message>
        <source>Ctrl and arrows; Space in Practise</source>
        <translation>Strg und Pfeile; Leertaste beim Üben</translation>
    </message>
    <message>
        <source>move the hand by 1 mm (with Shift 5 mm); set the tool down there, and lift it</source>
        <translation>bewegen die Hand um 1 mm (mit Umschalt 5 mm); setzt das Werkzeug dort an und hebt es ab</translation>
    </message>
    <message>
        <source>H, O, Delete in Practise</source>
        <translation>H, O, Entf beim Üben</translation>
    </message>
    <message>
        <source>hold the tape where its end is, close it around the head, take tape or coil off</source>
        <translation>halten das Band an seinem Ende, schließen es um den Kopf, nehmen Band oder Spule ab</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W, Ctrl+Shift+E, Ctrl+Shift+T</source>
        <translation>Strg+Umschalt+W, Strg+Umschalt+E, Strg+Umschalt+T</translation>
    </message>
    <message>
        <source>save a page for a browser, export the head, save strips of paper</source>
        <translation>eine Seite für den Browser speichern, den Kopf exportieren, Papierstreifen speichern</translation>
    </message>
    <message>
        <source>Unsaved result</source>
        <translation>Ergebnis nicht gespeichert</translation>
    </message>
    <message>
        <source>What was done in this exercise is not saved.</source>
        <translation>Was in dieser Übung getan wurde, ist nicht gespeichert.</translation>
    </message>
    <message>
        <source>Discard the result</source>
        <translation>Ergebnis verwerfen</translation>
    </message>
</context>
<context>
    <name>Lengths</name>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>“%1” must be a number such as %2; this is not one.</source>
        <translation>„%1“ muss eine Zahl wie %2 sein; das ist keine.</translation>
    </message>
    <message>
        <source>“%1” must be from %2 to %3 %4.</source>
        <translation>„%1“ muss zwischen %2 und %3 %4 liegen.</translation>
    </message>
    <message>
        <source>Is it %1?</source>
        <translation>Gemeint: %1?</translation>
    </message>
    <message>
        <source>“%1” must be a whole number of degrees, such as 45.</source>
        <translation>„%1“ muss eine ganze Zahl von Grad sein, etwa 45.</translation>
    </message>
    <message>
        <source>“%1” must be from %2 to %3 degrees.</source>
        <translation>„%1“ muss zwischen %2 und %3 Grad liegen.</translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>The template brain shares only %1 positions with this head, too few to bring it under the skin.</source>
        <translation>Das Gehirn der Vorlage hat nur %1 Positionen mit diesem Kopf gemeinsam, zu wenige, um es unter die Haut zu legen.</translation>
    </message>
    <message>
        <source>The template&apos;s brain does not fit under this head&apos;s skin; check the four points.</source>
        <translation>Das Gehirn der Vorlage passt nicht unter die Haut dieses Kopfes; die vier Punkte prüfen.</translation>
    </message>
    <message>
        <source>A smooth map needs at least %1 pairs of points, the same number on both sides.</source>
        <translation>Eine glatte Abbildung braucht mindestens %1 Punktpaare, auf beiden Seiten gleich viele.</translation>
    </message>
    <message>
        <source>A point of a smooth map is not a number; place it again.</source>
        <translation>Ein Punkt einer glatten Abbildung ist keine Zahl; neu setzen.</translation>
    </message>
    <message>
        <source>The points of a smooth map lie in one plane; they must go round the head.</source>
        <translation>Die Punkte einer glatten Abbildung liegen in einer Ebene; sie müssen rund um den Kopf liegen.</translation>
    </message>
    <message>
        <source>Two points of a smooth map lie in one place; place them apart.</source>
        <translation>Zwei Punkte einer glatten Abbildung liegen an derselben Stelle; getrennt setzen.</translation>
    </message>
    <message>
        <source>This coil has no casing, so it rests on nothing; choose another.</source>
        <translation>Diese Spule hat kein Gehäuse und liegt daher nirgends auf; eine andere wählen.</translation>
    </message>
    <message>
        <source>A cap&apos;s thickness must be from 0 to 30 mm; correct it.</source>
        <translation>Die Dicke einer Kappe muss 0 bis 30 mm betragen; korrigieren.</translation>
    </message>
    <message>
        <source>The steps of the gap map must be from 1 to 20 mm; correct them.</source>
        <translation>Die Schritte der Spaltkarte müssen 1 bis 20 mm betragen; korrigieren.</translation>
    </message>
    <message>
        <source>The steps of the gap map must be from 1 to 10 mm; correct them.</source>
        <translation>Die Schritte der Spaltkarte müssen 1 bis 10 mm betragen; korrigieren.</translation>
    </message>
    <message>
        <source>The coil cannot be laid with its edge over the edge mark and its centre line over the site mark; make both marks new.</source>
        <translation>Die Spule lässt sich nicht so anlegen, dass ihre Kante über der Kantenmarke und ihre Mittelachse über der Ortsmarke liegt; beide Marken neu zeichnen.</translation>
    </message>
    <message>
        <source>The tape from the %1 must be a length above 0; correct it.</source>
        <translation>Die Bandlänge vom %1 muss größer als 0 sein; korrigieren.</translation>
    </message>
    <message>
        <source>vertex</source>
        <translation>Vertex</translation>
    </message>
    <message>
        <source>nasion</source>
        <translation>Nasion</translation>
    </message>
    <message>
        <source>left tragus</source>
        <translation>Tragus links</translation>
    </message>
    <message>
        <source>right tragus</source>
        <translation>Tragus rechts</translation>
    </message>
    <message>
        <source>One tape is not enough to find a point again; give two or more of the distances to the vertex, the nasion and the two tragi.</source>
        <translation>Ein Band genügt nicht, um einen Punkt wiederzufinden; zwei oder mehr der Abstände zu Vertex, Nasion und den beiden Tragi angeben.</translation>
    </message>
    <message>
        <source>These tapes do not meet on the skin; read them again, and check that they belong to one mark.</source>
        <translation>Diese Bänder treffen sich nicht auf der Haut; neu ablesen und prüfen, ob sie zu einer einzigen Marke gehören.</translation>
    </message>
    <message>
        <source>These tapes do not meet on the skin (the best place misses one by %1 mm); read them again, and check that they belong to one mark.</source>
        <translation>Diese Bänder treffen sich nicht auf der Haut (die beste Stelle verfehlt eines um %1 mm); neu ablesen und prüfen, ob sie zu einer einzigen Marke gehören.</translation>
    </message>
    <message>
        <source>errors.%1 must be from %2 to %3 %4; correct it.</source>
        <translation>errors.%1 muss zwischen %2 und %3 %4 liegen; korrigieren.</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>The treatment&apos;s edge mark falls off the head, so nobody can lay the coil on it; choose another marking rule or site.</source>
        <translation>Die Kantenmarke der Behandlung liegt nicht mehr auf dem Kopf, daher kann niemand die Spule daran anlegen; eine andere Markierregel oder einen anderen Ort wählen.</translation>
    </message>
    <message>
        <source>The number of placements to try must be from 0 to 1000000; correct it.</source>
        <translation>Die Zahl der Platzierungsversuche muss 0 bis 1000000 betragen; korrigieren.</translation>
    </message>
    <message>
        <source>The treatment&apos;s edge mark falls off the head, so nothing can be laid on it; choose another rule or site.</source>
        <translation>Die Kantenmarke der Behandlung liegt nicht mehr auf dem Kopf, daher lässt sich nichts daran anlegen; eine andere Regel oder einen anderen Ort wählen.</translation>
    </message>
    <message>
        <source>The vertex can be marked at most %1 cm off in this lesson; choose less.</source>
        <translation>In dieser Lektion kann der Vertex höchstens %1 cm falsch markiert sein; weniger wählen.</translation>
    </message>
    <message>
        <source>The skin ends before the wrong vertex; choose less.</source>
        <translation>Die Haut endet vor dem falschen Vertex; weniger wählen.</translation>
    </message>
    <message>
        <source>From so wrong a vertex the search start falls on the face; choose less.</source>
        <translation>Bei einem so falschen Vertex fällt der Suchstart ins Gesicht; weniger wählen.</translation>
    </message>
    <message>
        <source>This treatment site is a landmark, not a length from the hotspot, so no such tape can be read wrongly.</source>
        <translation>Dieser Behandlungsort ist eine Landmarke und keine Strecke ab dem Hotspot, daher kann kein solches Band falsch abgelesen werden.</translation>
    </message>
    <message>
        <source>The coil can be turned by at most 90 degrees in this lesson; choose less.</source>
        <translation>In dieser Lektion lässt sich die Spule um höchstens 90 Grad drehen; weniger wählen.</translation>
    </message>
    <message>
        <source>inion</source>
        <translation>Inion</translation>
    </message>
    <message>
        <source>The straight line from %1 to %2 is %3 mm; on a head it is %4 to %5 mm. Check both points and the unit.</source>
        <translation>Die gerade Strecke von %1 bis %2 beträgt %3 mm; an einem Kopf sind es %4 bis %5 mm. Beide Punkte und die Einheit prüfen.</translation>
    </message>
    <message>
        <source>The %1 has a coordinate that is not a number; enter it again.</source>
        <translation>Beim %1 ist eine Koordinate keine Zahl; neu eingeben.</translation>
    </message>
    <message>
        <source>The %1 and the %2 are %3 mm apart; place each at its own spot on the head.</source>
        <translation>%1 und %2 liegen %3 mm auseinander; jeden Punkt an seine eigene Stelle am Kopf setzen.</translation>
    </message>
    <message>
        <source>The line from inion to nasion runs %1 degrees to the line between the tragi instead of about 90; check the four points.</source>
        <translation>Die Linie vom Inion zum Nasion verläuft %1 Grad zur Linie zwischen den Tragi statt etwa 90; die vier Punkte prüfen.</translation>
    </message>
    <message>
        <source>Both tragi lie on the same side of the line from inion to nasion; check the four points.</source>
        <translation>Beide Tragi liegen auf derselben Seite der Linie vom Inion zum Nasion; die vier Punkte prüfen.</translation>
    </message>
    <message>
        <source>The nasion and inion lie %1 mm below the tragi, as if left and right tragus were swapped (or nasion and inion); check the four points.</source>
        <translation>Nasion und Inion liegen %1 mm unter den Tragi, als wären linker und rechter Tragus vertauscht (oder Nasion und Inion); die vier Punkte prüfen.</translation>
    </message>
    <message>
        <source>The %1 is %2 mm away from the skin (at most %3); place it on the head&apos;s surface.</source>
        <translation>Der Punkt „%1“ liegt %2 mm von der Haut entfernt (höchstens %3); auf die Oberfläche des Kopfes setzen.</translation>
    </message>
    <message>
        <source>No head could be made out in this skin, so its four points cannot be guessed; place them by hand.</source>
        <translation>In dieser Haut ließ sich kein Kopf erkennen, daher können seine vier Punkte nicht geschätzt werden; von Hand setzen.</translation>
    </message>
    <message>
        <source>No skin was found above the tragi; the surface must cover the top of the head.</source>
        <translation>Über den Tragi wurde keine Haut gefunden; die Oberfläche muss den Oberkopf umfassen.</translation>
    </message>
    <message>
        <source>nasion-inion</source>
        <translation>Nasion-Inion</translation>
    </message>
    <message>
        <source>tragus-tragus</source>
        <translation>Tragus-Tragus</translation>
    </message>
    <message>
        <source>circumference</source>
        <translation>Kopfumfang</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>The %1 tape reads %2; it must be from %3 to %4. Measure again.</source>
        <translation>Das Maß %1 beträgt %2; es muss zwischen %3 und %4 liegen. Neu messen.</translation>
    </message>
    <message>
        <source>The vertex does not settle: half of nasion-inion and half of tragus-tragus do not meet on this skin; check the four points and the surface at the top of the head.</source>
        <translation>Der Vertex lässt sich nicht bestimmen: Die Hälften von Nasion-Inion und Tragus-Tragus treffen sich auf dieser Haut nicht; die vier Punkte und die Oberfläche am Oberkopf prüfen.</translation>
    </message>
    <message>
        <source>The two points lie on separate pieces of the skin, so no path joins them; check the head&apos;s mesh.</source>
        <translation>Die beiden Punkte liegen auf getrennten Stücken der Haut, daher verbindet sie kein Weg; das Netz des Kopfes prüfen.</translation>
    </message>
    <message>
        <source>The walk got stuck among triangles without area; repair the mesh first.</source>
        <translation>Der Weg blieb zwischen Dreiecken ohne Fläche stecken; zuerst das Netz reparieren.</translation>
    </message>
    <message>
        <source>The walk&apos;s direction stands upright on the skin here; choose one along the skin.</source>
        <translation>Die Richtung des Weges steht hier senkrecht auf der Haut; eine entlang der Haut wählen.</translation>
    </message>
    <message>
        <source>The length of a walk must be a number from 0 mm to a kilometre.</source>
        <translation>Die Länge eines Weges muss eine Zahl von 0 mm bis zu einem Kilometer sein.</translation>
    </message>
    <message>
        <source>The direction of a walk must be three numbers, not all zero.</source>
        <translation>Die Richtung eines Weges muss aus drei Zahlen bestehen, die nicht alle null sind.</translation>
    </message>
    <message>
        <source>The walk&apos;s direction points more than 60 degrees away from the skin; choose one along the skin.</source>
        <translation>Die Richtung des Weges weist mehr als 60 Grad von der Haut weg; eine entlang der Haut wählen.</translation>
    </message>
    <message>
        <source>The skin ends between this edge mark and the pulse point; move the mark.</source>
        <translation>Die Haut endet zwischen dieser Kantenmarke und dem Impulspunkt; die Marke verschieben.</translation>
    </message>
    <message>
        <source>No pulse point puts the coil&apos;s edge over this mark (the nearest misses it by %1 mm); move the mark or choose another marking rule.</source>
        <translation>Kein Impulspunkt bringt die Kante der Spule über diese Marke (der nächste verfehlt sie um %1 mm); die Marke verschieben oder eine andere Markierregel wählen.</translation>
    </message>
    <message>
        <source>%1 must be from %2 to %3 %4, but is not a number; correct it.</source>
        <translation>%1 muss zwischen %2 und %3 %4 liegen, ist aber keine Zahl; korrigieren.</translation>
    </message>
    <message>
        <source>%1 must be from %2 to %3 %4, but is %5; correct it.</source>
        <translation>%1 muss zwischen %2 und %3 %4 liegen, ist aber %5; korrigieren.</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>Nahpunkt</translation>
    </message>
    <message>
        <source>The edge mark of %1 by the %2 rule falls off the head (over the face or past the skin&apos;s border), so it is left out.</source>
        <translation>Die Kantenmarke am %1 nach der %2regel liegt nicht mehr auf dem Kopf (über dem Gesicht oder jenseits des Hautrandes) und wird daher weggelassen.</translation>
    </message>
    <message>
        <source>The %1 tape was entered as %2 cm, but the head measures %3 cm; check the tape and the four points.</source>
        <translation>Das Maß %1 wurde mit %2 cm eingegeben, aber der Kopf misst %3 cm; das Band und die vier Punkte prüfen.</translation>
    </message>
    <message>
        <source>(grid rows from the start)</source>
        <translation>(Rasterreihen ab dem Start)</translation>
    </message>
    <message>
        <source>(grid columns from the start)</source>
        <translation>(Rasterspalten ab dem Start)</translation>
    </message>
    <message>
        <source>treatment.label is &quot;%1&quot;, which is not a position of the 10-20, 10-10 or 10-5 system; write one such as F3.</source>
        <translation>treatment.label ist &quot;%1&quot; und damit keine Position des 10-20-, 10-10- oder 10-5-Systems; eine wie F3 schreiben.</translation>
    </message>
    <message>
        <source>The search start falls on the face; shorten search.lateral_mm or search.anterior_mm.</source>
        <translation>Der Suchstart fällt ins Gesicht; search.lateral_mm oder search.anterior_mm verringern.</translation>
    </message>
    <message>
        <source>the start</source>
        <translation>Suchstart</translation>
    </message>
    <message>
        <source>The start&apos;s edge mark by the %1 rule falls off the head, so no grid can be drawn around it; choose another rule, angle or start.</source>
        <translation>Die Kantenmarke am Suchstart nach der %1regel liegt nicht mehr auf dem Kopf, daher lässt sich kein Raster um sie zeichnen; eine andere Regel, einen anderen Winkel oder einen anderen Start wählen.</translation>
    </message>
    <message>
        <source>The search grid reaches past the skin&apos;s border; move the start.</source>
        <translation>Das Suchraster reicht über den Hautrand hinaus; den Start verschieben.</translation>
    </message>
    <message>
        <source>The position %1 lies on the face of this head; choose another.</source>
        <translation>Die Position %1 liegt bei diesem Kopf im Gesicht; eine andere wählen.</translation>
    </message>
    <message>
        <source>The treatment site, %1 cm forward of the hotspot, falls on the face; shorten treatment.distance_mm.</source>
        <translation>Der Behandlungsort, %1 cm vor dem Hotspot, fällt ins Gesicht; treatment.distance_mm verringern.</translation>
    </message>
    <message>
        <source>the treatment site</source>
        <translation>Behandlungsort</translation>
    </message>
    <message>
        <source>The skin is flat where a tape line should start, so the line has no direction; move the point a little.</source>
        <translation>Die Haut ist flach, wo eine Bandlinie beginnen soll, daher hat die Linie keine Richtung; den Punkt ein wenig verschieben.</translation>
    </message>
    <message>
        <source>The surface has an edge shared by more than two triangles; repair the mesh first.</source>
        <translation>Die Oberfläche hat eine Dreieckskante, die zu mehr als zwei Dreiecken gehört; zuerst das Netz reparieren.</translation>
    </message>
    <message>
        <source>The surface has neighbouring triangles that face opposite ways; repair the mesh first.</source>
        <translation>Die Oberfläche hat benachbarte Dreiecke, die in entgegengesetzte Richtungen weisen; zuerst das Netz reparieren.</translation>
    </message>
    <message>
        <source>The surface has no triangles.</source>
        <translation>Die Oberfläche hat keine Dreiecke.</translation>
    </message>
    <message>
        <source>The surface has a coordinate that is not a number.</source>
        <translation>Die Oberfläche hat eine Koordinate, die keine Zahl ist.</translation>
    </message>
    <message>
        <source>The surface has a triangle with a corner that does not exist.</source>
        <translation>Die Oberfläche hat ein Dreieck mit einer Ecke, die es nicht gibt.</translation>
    </message>
    <message>
        <source>The surface has a triangle that uses one corner twice.</source>
        <translation>Die Oberfläche hat ein Dreieck, das eine Ecke zweimal verwendet.</translation>
    </message>
    <message>
        <source>A moved surface must keep its number of corners.</source>
        <translation>Eine verschobene Oberfläche muss die Zahl ihrer Ecken behalten.</translation>
    </message>
    <message>
        <source>The moved surface has a coordinate that is not a number.</source>
        <translation>Die verschobene Oberfläche hat eine Koordinate, die keine Zahl ist.</translation>
    </message>
    <message>
        <source>A place to be found on the skin has a coordinate that is not a number; give all three.</source>
        <translation>Eine Stelle, die auf der Haut gesucht wird, hat eine Koordinate, die keine Zahl ist; alle drei angeben.</translation>
    </message>
    <message>
        <source>A tape&apos;s length must be a number from 0 up.</source>
        <translation>Die Länge eines Bandes muss eine Zahl ab 0 sein.</translation>
    </message>
    <message>
        <source>A tape needs a third point beside its two ends; the three points lie in one line.</source>
        <translation>Ein Band braucht neben seinen beiden Enden einen dritten Punkt; die drei Punkte liegen auf einer Geraden.</translation>
    </message>
    <message>
        <source>The skin has no unbroken line for a tape between two of the points; the surface ends or has a hole there.</source>
        <translation>Die Haut hat zwischen zwei der Punkte keine durchgehende Linie für ein Band; dort endet die Oberfläche oder hat ein Loch.</translation>
    </message>
    <message>
        <source>The skin ends before the tape does; shorten the distance.</source>
        <translation>Die Haut endet vor dem Band; den Abstand verkürzen.</translation>
    </message>
    <message>
        <source>The template&apos;s brain was pushed in by up to %1 mm over %2 % of it, to stay %3 mm under the skin.</source>
        <translation>Das Gehirn der Vorlage wurde um bis zu %1 mm nach innen gedrückt, auf %2 % seiner Fläche, damit es %3 mm unter der Haut bleibt.</translation>
    </message>
    <message>
        <source>%1 names no regions; install the package it came with again.</source>
        <translation>%1 nennt keine Regionen; das Paket, aus dem die Datei stammt, neu installieren.</translation>
    </message>
    <message>
        <source>The brain under the skin is left out, because %1 is missing; install the Debian package mricron-data to see it.</source>
        <translation>Das Gehirn unter der Haut wird weggelassen, weil %1 fehlt; das Debian-Paket mricron-data installieren, um es zu sehen.</translation>
    </message>
    <message>
        <source>%1 holds no brain; install the package mricron-data again.</source>
        <translation>%1 enthält kein Gehirn; das Paket mricron-data neu installieren.</translation>
    </message>
    <message>
        <source>%1 holds a voxel that is no region&apos;s number; install the package mricron-data again.</source>
        <translation>%1 enthält ein Voxel, das keine Regionsnummer ist; das Paket mricron-data neu installieren.</translation>
    </message>
    <message>
        <source>%1 holds no region; install the package mricron-data again.</source>
        <translation>%1 enthält keine Region; das Paket mricron-data neu installieren.</translation>
    </message>
    <message>
        <source>Making the template&apos;s brain, once</source>
        <translation>Gehirn der Vorlage wird erstellt, einmalig</translation>
    </message>
    <message>
        <source>Measuring the template&apos;s head, once</source>
        <translation>Kopf der Vorlage wird vermessen, einmalig</translation>
    </message>
    <message>
        <source>Reading the regions of the brain, once</source>
        <translation>Regionen des Gehirns werden gelesen, einmalig</translation>
    </message>
    <message>
        <source>The template&apos;s head in %1 cannot be measured (%2); install the package mricron-data again.</source>
        <translation>Der Kopf der Vorlage in %1 lässt sich nicht vermessen (%2); das Paket mricron-data neu installieren.</translation>
    </message>
    <message>
        <source>The head of the case is none of the kinds known; choose it again.</source>
        <translation>Der Kopf des Falls ist von keiner bekannten Art; neu wählen.</translation>
    </message>
    <message>
        <source>does not go with the generic head, which has its own</source>
        <translation>passt nicht zum Standardkopf, der eigene Angaben mitbringt</translation>
    </message>
    <message>
        <source>must be the name of a file, but is %1</source>
        <translation>muss der Name einer Datei sein, ist aber %1</translation>
    </message>
    <message>
        <source>does not go with an mri head, whose file says its own</source>
        <translation>passt nicht zu einem MRT-Kopf, dessen Datei ihre eigene Angabe mitbringt</translation>
    </message>
    <message>
        <source>The head of the case has no nasion, inion and tragi yet, so the case cannot be saved; place them first.</source>
        <translation>Der Kopf des Falls hat noch kein Nasion, kein Inion und keine Tragi, daher lässt sich der Fall nicht speichern; zuerst diese Punkte setzen.</translation>
    </message>
    <message>
        <source>case</source>
        <translation>Fall</translation>
    </message>
    <message>
        <source>A setting to be written has no such choice; set it again.</source>
        <translation>Eine zu schreibende Einstellung ist keine der möglichen; neu einstellen.</translation>
    </message>
    <message>
        <source>must be a coil that ships (%1), but is %2</source>
        <translation>muss eine mitgelieferte Spule sein (%1), ist aber %2</translation>
    </message>
    <message>
        <source>belongs to the rule landmark, but the rule is forward</source>
        <translation>gehört zur Regel landmark, aber die Regel ist forward</translation>
    </message>
    <message>
        <source>belongs to the rule forward, but the rule is landmark</source>
        <translation>gehört zur Regel forward, aber die Regel ist landmark</translation>
    </message>
    <message>
        <source>must be a position of the 10-20, 10-10 or 10-5 system such as F3, but is %1</source>
        <translation>muss eine Position des 10-20-, 10-10- oder 10-5-Systems wie F3 sein, ist aber %1</translation>
    </message>
    <message>
        <source>mm over the flat face</source>
        <translation>mm über der ebenen Fläche</translation>
    </message>
    <message>
        <source>must be more than bottom_mm</source>
        <translation>muss größer als bottom_mm sein</translation>
    </message>
    <message>
        <source>must have at least three points</source>
        <translation>muss mindestens drei Punkte haben</translation>
    </message>
    <message>
        <source>must not cross or touch itself</source>
        <translation>darf sich nicht selbst kreuzen oder berühren</translation>
    </message>
    <message>
        <source>must run counter-clockwise</source>
        <translation>muss gegen den Uhrzeigersinn verlaufen</translation>
    </message>
    <message>
        <source>must be more than inner_mm</source>
        <translation>muss größer als inner_mm sein</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>Spule</translation>
    </message>
    <message>
        <source>must list at least one part</source>
        <translation>muss mindestens einen Teil aufführen</translation>
    </message>
    <message>
        <source>The coil &quot;%1&quot; does not ship with this program; choose one of: %2.</source>
        <translation>Die Spule „%1“ gehört nicht zu diesem Programm; eine von diesen wählen: %2.</translation>
    </message>
    <message>
        <source>there is no such folder; check the name.</source>
        <translation>Einen solchen Ordner gibt es nicht; den Namen prüfen.</translation>
    </message>
    <message>
        <source>a part of its path is not a folder; check the name.</source>
        <translation>Ein Teil des Pfades ist kein Ordner; den Namen prüfen.</translation>
    </message>
    <message>
        <source>that is not allowed; check who may read and write there.</source>
        <translation>Das ist nicht erlaubt; prüfen, wer dort lesen und schreiben darf.</translation>
    </message>
    <message>
        <source>the disk can only be read; choose another place.</source>
        <translation>Der Datenträger lässt sich nur lesen; einen anderen Speicherort wählen.</translation>
    </message>
    <message>
        <source>the disk is full; make room and try again.</source>
        <translation>Der Datenträger ist voll; Platz schaffen und erneut versuchen.</translation>
    </message>
    <message>
        <source>the file would be larger than allowed; choose another place.</source>
        <translation>Die Datei würde größer als erlaubt; einen anderen Speicherort wählen.</translation>
    </message>
    <message>
        <source>the name is too long; shorten it.</source>
        <translation>Der Name ist zu lang; kürzen.</translation>
    </message>
    <message>
        <source>its links lead in a circle; choose another place.</source>
        <translation>Die Verknüpfungen führen im Kreis; einen anderen Speicherort wählen.</translation>
    </message>
    <message>
        <source>too many files are open; close some programs and try again.</source>
        <translation>Zu viele Dateien sind geöffnet; einige Programme schließen und erneut versuchen.</translation>
    </message>
    <message>
        <source>%1; try another place.</source>
        <translation>%1; einen anderen Speicherort versuchen.</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2</source>
        <translation>%1 kann nicht geschrieben werden: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not the name of a file; choose a name.</source>
        <translation>„%1“ ist kein Dateiname; einen Namen wählen.</translation>
    </message>
    <message>
        <source>%1 is a folder; choose the name of a file in it.</source>
        <translation>%1 ist ein Ordner; den Namen einer Datei darin wählen.</translation>
    </message>
    <message>
        <source>%1 is not a plain file; choose another name.</source>
        <translation>%1 ist keine gewöhnliche Datei; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1 does not exist; check the name.</source>
        <translation>%1 gibt es nicht; den Namen prüfen.</translation>
    </message>
    <message>
        <source>%1 cannot be opened: %2</source>
        <translation>%1 kann nicht geöffnet werden: %2</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 kann nicht gelesen werden: %2</translation>
    </message>
    <message>
        <source>%1 is a folder; choose a file in it.</source>
        <translation>%1 ist ein Ordner; eine Datei darin wählen.</translation>
    </message>
    <message>
        <source>%1 is not a plain file; choose another one.</source>
        <translation>%1 ist keine gewöhnliche Datei; eine andere wählen.</translation>
    </message>
    <message>
        <source>%1 is larger than %2 bytes, which is the most that is read; choose another file.</source>
        <translation>%1 ist größer als %2 Byte, und mehr wird nicht gelesen; eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>a group { }</source>
        <translation>eine Gruppe { }</translation>
    </message>
    <message>
        <source>a list of %1</source>
        <translation>eine Liste der Länge %1</translation>
    </message>
    <message>
        <source>%1: the key %2 is given twice in the same group; keep one and read the %3 again.</source>
        <translation>%1: Der Schlüssel %2 steht zweimal in derselben Gruppe; einen behalten und %3 neu einlesen.</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>%1: the number %2 at %3 is too large; correct it and read the %4 again.</source>
        <translation>%1: Die Zahl %2 in %3 ist zu groß; korrigieren und %4 neu einlesen.</translation>
    </message>
    <message>
        <source>%1 is not JSON: the text at %2 is not UTF-8; correct it and read the %3 again.</source>
        <translation>%1 ist kein JSON: Der Text in %2 ist nicht UTF-8; korrigieren und %3 neu einlesen.</translation>
    </message>
    <message>
        <source>%1 is not JSON: it ends too early, at %2; correct it and read the %3 again.</source>
        <translation>%1 ist kein JSON: Die Datei endet zu früh, in %2; korrigieren und %3 neu einlesen.</translation>
    </message>
    <message>
        <source>%1 is not JSON: what stands at %2 does not belong there; correct it and read the %3 again.</source>
        <translation>%1 ist kein JSON: Was in %2 steht, gehört nicht dorthin; korrigieren und %3 neu einlesen.</translation>
    </message>
    <message>
        <source>%1 is nested deeper than %2 levels, which no %3 is; choose another file.</source>
        <translation>%1 ist tiefer als %2 Ebenen verschachtelt und damit als %3 nicht lesbar; eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>%1 is not JSON: it holds zero bytes, as no text does; choose another file.</source>
        <translation>%1 ist kein JSON: Die Datei enthält Nullbytes, was in Text nicht vorkommt; eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>%1 is not a Scalpmark %2: it should be a group { } but is %3; choose another file.</source>
        <translation>%1 ist als Scalpmark-%2 nicht lesbar: Die Datei müsste eine Gruppe { } sein, ist aber %3; eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>%1 is not a Scalpmark %2: format is missing and must be &quot;%3&quot;; choose another file.</source>
        <translation>%1 ist als Scalpmark-%2 nicht lesbar: format fehlt und muss &quot;%3&quot; sein; eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>%1 is not a Scalpmark %2: format must be &quot;%3&quot;, but is %4; choose another file.</source>
        <translation>%1 ist als Scalpmark-%2 nicht lesbar: format muss &quot;%3&quot; sein, ist aber %4; eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>%1: version is missing and must be %2; add it and read the %3 again.</source>
        <translation>%1: version fehlt und muss %2 sein; ergänzen und %3 neu einlesen.</translation>
    </message>
    <message>
        <source>%1: version must be %2, but is %3; use the program that wrote it, or a newer one.</source>
        <translation>%1: version muss %2 sein, ist aber %3; das Programm verwenden, das die Datei geschrieben hat, oder ein neueres.</translation>
    </message>
    <message>
        <source>%1: %2 is not a key known here (known: %3); remove it and read the %4 again.</source>
        <translation>%1: %2 ist hier kein bekannter Schlüssel (bekannt: %3); entfernen und %4 neu einlesen.</translation>
    </message>
    <message>
        <source>must be a group { }, but is %1</source>
        <translation>muss eine Gruppe { } sein, ist aber %1</translation>
    </message>
    <message>
        <source>must be a list [ ], but is %1</source>
        <translation>muss eine Liste [ ] sein, ist aber %1</translation>
    </message>
    <message>
        <source>must be a number from %1 to %2 (%3), but is %4</source>
        <translation>muss eine Zahl von %1 bis %2 (%3) sein, ist aber %4</translation>
    </message>
    <message>
        <source>must be a whole number from %1 to %2, but is %3</source>
        <translation>muss eine ganze Zahl von %1 bis %2 sein, ist aber %3</translation>
    </message>
    <message>
        <source>must be text in quotes, but is %1</source>
        <translation>muss Text in Anführungszeichen sein, ist aber %1</translation>
    </message>
    <message>
        <source>must be at most %1 characters long, but has %2</source>
        <translation>darf höchstens %1 Zeichen lang sein, hat aber %2</translation>
    </message>
    <message>
        <source>must be three numbers [x, y, z] in mm, but is %1</source>
        <translation>muss aus drei Zahlen [x, y, z] in mm bestehen, ist aber %1</translation>
    </message>
    <message>
        <source>must be a list of points [x, y], but is %1</source>
        <translation>muss eine Liste von Punkten [x, y] sein, ist aber %1</translation>
    </message>
    <message>
        <source>must be two numbers from %1 to %2 (mm), but is %3</source>
        <translation>muss aus zwei Zahlen von %1 bis %2 (mm) bestehen, ist aber %3</translation>
    </message>
    <message>
        <source>must be %1, but is %2</source>
        <translation>muss %1 sein, ist aber %2</translation>
    </message>
    <message>
        <source>%1: %2 is missing; add it and read the %3 again.</source>
        <translation>%1: %2 fehlt; ergänzen und %3 neu einlesen.</translation>
    </message>
    <message>
        <source>%1: %2 %3; correct it and read the %4 again.</source>
        <translation>%1: %2 %3; korrigieren und %4 neu einlesen.</translation>
    </message>
    <message>
        <source>A number to be written is not finite, so nothing was written; check the head and the case.</source>
        <translation>Eine zu schreibende Zahl ist nicht endlich, daher wurde nichts geschrieben; Kopf und Fall prüfen.</translation>
    </message>
    <message>
        <source>A text to be written is not UTF-8, so nothing was written; rename it or type it again.</source>
        <translation>Ein zu schreibender Text ist nicht UTF-8, daher wurde nichts geschrieben; umbenennen oder neu eintippen.</translation>
    </message>
    <message>
        <source>generic head, as built in</source>
        <translation>Standardkopf, wie mitgeliefert</translation>
    </message>
    <message>
        <source>generic head, scaled to the tapes</source>
        <translation>Standardkopf, an die Maße angepasst</translation>
    </message>
    <message>
        <source>The head %1 has no nasion, inion and tragi yet; place the four points first.</source>
        <translation>Der Kopf %1 hat noch kein Nasion, kein Inion und keine Tragi; zuerst die vier Punkte setzen.</translation>
    </message>
    <message>
        <source>scan %1</source>
        <translation>Scan %1</translation>
    </message>
    <message>
        <source>MRI %1</source>
        <translation>MRT %1</translation>
    </message>
    <message>
        <source>Too many files are open to read a file through; close other programs and try again.</source>
        <translation>Das System stellt keine Pipe bereit, um eine Datei zu lesen; andere Programme schließen und erneut versuchen.</translation>
    </message>
    <message>
        <source>The part of the program that reads heads, %1, does not start (%2); build or install the program again.</source>
        <translation>Der Programmteil, der Köpfe liest, %1, startet nicht (%2); das Programm neu bauen oder installieren.</translation>
    </message>
    <message>
        <source>%1 could not be read: there was no progress for %2 seconds; save it again, or with fewer triangles, in the program that made it.</source>
        <translation>%1 konnte nicht gelesen werden: %2 Sekunden lang kam nichts; im Ursprungsprogramm neu oder ausgedünnt speichern.</translation>
    </message>
    <message>
        <source>%1 could not be read: it takes more time or memory than a head does; save it anew, or thinner, in the program that made it.</source>
        <translation>%1 konnte nicht gelesen werden: Die Datei braucht mehr Zeit oder Speicher als ein Kopf; im Ursprungsprogramm neu oder ausgedünnt speichern.</translation>
    </message>
    <message>
        <source>%1 could not be read: it is damaged in a way that stops the reader; save it anew in the program that made it.</source>
        <translation>%1 konnte nicht gelesen werden: Die Datei ist so beschädigt, dass das Lesen abbricht; im Ursprungsprogramm neu speichern.</translation>
    </message>
    <message>
        <source>%1 was read only in part; try again.</source>
        <translation>%1 wurde nur teilweise gelesen; erneut versuchen.</translation>
    </message>
    <message>
        <source>%1 could not be read: it needs more than the %2 MB of memory that a head may take; save it thinner in the program that made it.</source>
        <translation>%1 konnte nicht gelesen werden: Die Datei braucht mehr als die %2 MB Speicher, die ein Kopf belegen darf; im Ursprungsprogramm ausgedünnt speichern.</translation>
    </message>
    <message>
        <source>its description is not valid glTF</source>
        <translation>Die Beschreibung darin ist kein gültiges glTF</translation>
    </message>
    <message>
        <source>a number in its description is missing or not usable</source>
        <translation>Eine Zahl in der Beschreibung fehlt oder ist unbrauchbar</translation>
    </message>
    <message>
        <source>a part of it is of no known kind</source>
        <translation>Ein Teil ist von unbekannter Art</translation>
    </message>
    <message>
        <source>a part of it is longer than what it lies in</source>
        <translation>Ein Teil ist länger als das, worin er liegt</translation>
    </message>
    <message>
        <source>it ends before all its elements have come</source>
        <translation>Die Datei endet, bevor alle Elemente gekommen sind</translation>
    </message>
    <message>
        <source>a part of its mesh has too few corners</source>
        <translation>Ein Teil des Netzes hat zu wenige Ecken</translation>
    </message>
    <message>
        <source>%1 is damaged: %2; export it again.</source>
        <translation>%1 ist beschädigt: %2; neu exportieren.</translation>
    </message>
    <message>
        <source>it does not begin as a .glb file does</source>
        <translation>Die Datei beginnt nicht wie eine .glb-Datei</translation>
    </message>
    <message>
        <source>%1 is not glTF 2; export it as glTF 2, or as a .ply file.</source>
        <translation>%1 ist kein glTF 2; als glTF 2 oder als .ply-Datei exportieren.</translation>
    </message>
    <message>
        <source>%1 is packed (%2), which is not read here; export it without compression.</source>
        <translation>%1 ist gepackt (%2), was hier nicht gelesen wird; ohne Kompression exportieren.</translation>
    </message>
    <message>
        <source>its description points at a part that does not exist</source>
        <translation>Die Beschreibung verweist auf einen Teil, den es nicht gibt</translation>
    </message>
    <message>
        <source>%1 gives its corners in whole numbers, which is not read here; export it without compression.</source>
        <translation>%1 gibt die Ecken in ganzen Zahlen an, was hier nicht gelesen wird; ohne Kompression exportieren.</translation>
    </message>
    <message>
        <source>%1 holds lines that are closed in a loop; export the surface alone.</source>
        <translation>%1 enthält Linien, die zu einer Schleife geschlossen sind; nur die Oberfläche exportieren.</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation>Zentimeter</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>%1 is not the size of a head in millimetres, centimetres, metres or inches (its largest extent is %2); choose a mesh of a head, or say the unit.</source>
        <translation>%1 hat weder in Millimetern noch in Zentimetern, Metern oder Zoll die Größe eines Kopfes (die größte Ausdehnung ist %2); das Netz eines Kopfes wählen oder die Einheit angeben.</translation>
    </message>
    <message>
        <source>%1 is not the size of a head in %2 (its largest extent would be %3 cm); %4 would fit.</source>
        <translation>%1 hat, in der Einheit %2 gelesen, nicht die Größe eines Kopfes (die größte Ausdehnung wäre %3 cm); passen würde die Einheit %4.</translation>
    </message>
    <message>
        <source>Took the numbers in the file for %1, in which it is %2 cm at its largest extent; a head of an adult&apos;s size was made out so, in %3 less well.</source>
        <translation>Die Zahlen in der Datei gelten als %1, größte Ausdehnung %2 cm; so ließ sich ein Kopf von Erwachsenengröße erkennen, als %3 weniger gut.</translation>
    </message>
    <message>
        <source>Took the numbers in the file for %1, in which it is %2 cm at its largest extent; a head of an adult&apos;s size was made out so, in %3 none.</source>
        <translation>Die Zahlen in der Datei gelten als %1, größte Ausdehnung %2 cm; so ließ sich ein Kopf von Erwachsenengröße erkennen, als %3 keiner.</translation>
    </message>
    <message>
        <source>Took the numbers in the file for %1, in which it is %2 cm at its largest extent; %3 would fit too, so compare a tape&apos;s length.</source>
        <translation>Die Zahlen in der Datei gelten als %1, größte Ausdehnung %2 cm; auch die Einheit %3 würde passen, daher eine Bandlänge vergleichen.</translation>
    </message>
    <message>
        <source>Took the numbers in the file for %1, in which it is %2 cm at its largest extent.</source>
        <translation>Die Zahlen in der Datei gelten als %1, größte Ausdehnung %2 cm.</translation>
    </message>
    <message>
        <source>%1 is flat (only %2 mm thick); choose a mesh of a head.</source>
        <translation>%1 ist flach (nur %2 mm dick); das Netz eines Kopfes wählen.</translation>
    </message>
    <message>
        <source>The skin has one hole, %1 mm around.</source>
        <translation>Die Haut hat ein Loch mit %1 mm Umfang.</translation>
    </message>
    <message>
        <source>The skin has %1 holes, the largest %2 mm around.</source>
        <translation>Die Haut hat %1 Löcher, das größte mit %2 mm Umfang.</translation>
    </message>
    <message>
        <source>reading the mesh</source>
        <translation>Netz wird gelesen</translation>
    </message>
    <message>
        <source>joining triangles</source>
        <translation>Dreiecke werden verbunden</translation>
    </message>
    <message>
        <source>checking the mesh</source>
        <translation>Netz wird geprüft</translation>
    </message>
    <message>
        <source>thinning out the triangles</source>
        <translation>Dreiecke werden ausgedünnt</translation>
    </message>
    <message>
        <source>looking for shoulders</source>
        <translation>Schultern werden gesucht</translation>
    </message>
    <message>
        <source>%1 could not be made into a skin (%2); repair the mesh in the program that made it.</source>
        <translation>Aus %1 ließ sich keine Haut machen (%2); das Netz im Ursprungsprogramm reparieren.</translation>
    </message>
    <message>
        <source>%1 has too many edges where more than two triangles meet to be repaired here; repair the mesh in the program that made it.</source>
        <translation>%1 hat zu viele Dreieckskanten, an denen mehr als zwei Dreiecke zusammentreffen, um hier repariert zu werden; das Netz im Ursprungsprogramm reparieren.</translation>
    </message>
    <message>
        <source>%1 holds no triangle with an area; choose a mesh of the head&apos;s skin.</source>
        <translation>%1 enthält kein Dreieck mit einer Fläche; ein Netz der Haut des Kopfes wählen.</translation>
    </message>
    <message>
        <source>Left out 1 triangle without area.</source>
        <translation>1 Dreieck ohne Fläche weggelassen.</translation>
    </message>
    <message>
        <source>Left out %1 triangles without area.</source>
        <translation>%1 Dreiecke ohne Fläche weggelassen.</translation>
    </message>
    <message>
        <source>Left out 1 triangle that was there twice.</source>
        <translation>1 doppelt vorhandenes Dreieck weggelassen.</translation>
    </message>
    <message>
        <source>Left out %1 triangles that were there twice.</source>
        <translation>%1 doppelt vorhandene Dreiecke weggelassen.</translation>
    </message>
    <message>
        <source>Left out 1 triangle at edges where more than two triangles met.</source>
        <translation>1 Dreieck an Kanten weggelassen, an denen mehr als zwei zusammentrafen.</translation>
    </message>
    <message>
        <source>Left out %1 triangles at edges where more than two triangles met.</source>
        <translation>%1 Dreiecke an Kanten weggelassen, an denen mehr als zwei zusammentrafen.</translation>
    </message>
    <message>
        <source>Kept the largest of %1 pieces (%2 % of the surface).</source>
        <translation>Das größte von %1 Stücken behalten (%2 % der Oberfläche).</translation>
    </message>
    <message>
        <source>%1 is a surface with one side only, on which outside cannot be told; repair the mesh in the program that made it.</source>
        <translation>%1 ist eine Oberfläche mit nur einer Seite, bei der sich außen nicht bestimmen lässt; das Netz im Ursprungsprogramm reparieren.</translation>
    </message>
    <message>
        <source>Turned 1 triangle that faced inward.</source>
        <translation>1 nach innen weisendes Dreieck umgedreht.</translation>
    </message>
    <message>
        <source>Turned %1 triangles that faced inward.</source>
        <translation>%1 nach innen weisende Dreiecke umgedreht.</translation>
    </message>
    <message>
        <source>Parted the skin at 1 point where it touched itself.</source>
        <translation>Haut an 1 Punkt getrennt, wo sie sich nur in einem Punkt berührte.</translation>
    </message>
    <message>
        <source>Parted the skin at %1 points where it touched itself.</source>
        <translation>Haut an %1 Punkten getrennt, wo sie sich nur in einem Punkt berührte.</translation>
    </message>
    <message>
        <source>its header has a property of no known type</source>
        <translation>Der Header hat eine Eigenschaft von unbekanntem Typ</translation>
    </message>
    <message>
        <source>its header gives corners or triangles twice</source>
        <translation>Der Header gibt Ecken oder Dreiecke zweimal an</translation>
    </message>
    <message>
        <source>its header names no format</source>
        <translation>Der Header nennt kein Format</translation>
    </message>
    <message>
        <source>its header has an element without a number</source>
        <translation>Der Header hat ein Element ohne Anzahl</translation>
    </message>
    <message>
        <source>its header has a property before any element</source>
        <translation>Der Header hat eine Eigenschaft, die zu nichts gehört</translation>
    </message>
    <message>
        <source>its header has no end</source>
        <translation>Der Header hat kein Ende</translation>
    </message>
    <message>
        <source>%1 in line %2</source>
        <translation>%1 (Zeile %2)</translation>
    </message>
    <message>
        <source>a value is missing</source>
        <translation>Ein Wert fehlt</translation>
    </message>
    <message>
        <source>a list&apos;s length is no number</source>
        <translation>Die Länge einer Liste ist keine Zahl</translation>
    </message>
    <message>
        <source>a list is shorter than it says</source>
        <translation>Eine Liste ist kürzer als angegeben</translation>
    </message>
    <message>
        <source>a list&apos;s length is no whole number</source>
        <translation>Die Länge einer Liste ist keine ganze Zahl</translation>
    </message>
    <message>
        <source>Closed a small hole, up to %1 mm around.</source>
        <translation>Ein kleines Loch geschlossen, Umfang bis %1 mm.</translation>
    </message>
    <message>
        <source>Closed %1 small holes, up to %2 mm around.</source>
        <translation>%1 kleine Löcher geschlossen, Umfang bis %2 mm.</translation>
    </message>
    <message>
        <source>%1 has %2 triangles and cannot be thinned (%3); thin it to 150 000 in the program that made it.</source>
        <translation>%1 hat %2 Dreiecke und lässt sich nicht ausdünnen (%3); im Ursprungsprogramm auf 150 000 ausdünnen.</translation>
    </message>
    <message>
        <source>its borders alone have too many corners</source>
        <translation>schon die Ränder haben zu viele Ecken</translation>
    </message>
    <message>
        <source>Thinned the skin from %1 to %2 triangles; no corner was moved by more than %3 mm.</source>
        <translation>Haut von %1 auf %2 Dreiecke ausgedünnt; keine Ecke wurde um mehr als %3 mm verschoben.</translation>
    </message>
    <message>
        <source>the skin would move by %1 mm</source>
        <translation>die Haut würde sich um %1 mm verschieben</translation>
    </message>
    <message>
        <source>Cut the shoulders off below the neck.</source>
        <translation>Schultern unterhalb des Halses abgeschnitten.</translation>
    </message>
    <message>
        <source>The skin is rough (%1 mm up and down within a centimetre), as hair is: marks lie on the hair, not on the scalp; compare the tapes with those of the head itself.</source>
        <translation>Die Haut ist rau (%1 mm auf und ab innerhalb eines Zentimeters), wie Haar es ist: Marken liegen auf dem Haar, nicht auf der Kopfhaut; die Bandmaße mit denen des Kopfes selbst vergleichen.</translation>
    </message>
    <message>
        <source>%1 is not a mesh file read here; choose an .obj, .ply, .stl, .gltf or .glb file.</source>
        <translation>%1 ist keine hier lesbare Netzdatei; eine .obj-, .ply-, .stl-, .gltf- oder .glb-Datei wählen.</translation>
    </message>
    <message>
        <source>points at %1, which is not a .bin file beside it</source>
        <translation>verweist auf %1, was keine .bin-Datei daneben ist</translation>
    </message>
    <message>
        <source>points at %1, which cannot be read</source>
        <translation>verweist auf %1, was sich nicht lesen lässt</translation>
    </message>
    <message>
        <source>%1 has more than %2 triangles; thin it in the program that made it.</source>
        <translation>%1 hat mehr als %2 Dreiecke; im Ursprungsprogramm ausdünnen.</translation>
    </message>
    <message>
        <source>%1 has a coordinate that is not a usable number (vertex %2); export it again.</source>
        <translation>%1 hat eine Koordinate, die keine brauchbare Zahl ist (Ecke %2); neu exportieren.</translation>
    </message>
    <message>
        <source>%1 has a triangle with a corner that does not exist; export it again.</source>
        <translation>%1 hat ein Dreieck mit einer Ecke, die es nicht gibt; neu exportieren.</translation>
    </message>
    <message>
        <source>%1 is a folder; choose a mesh file in it.</source>
        <translation>%1 ist ein Ordner; eine Netzdatei darin wählen.</translation>
    </message>
    <message>
        <source>%1 is empty; export it again.</source>
        <translation>%1 ist leer; neu exportieren.</translation>
    </message>
    <message>
        <source>%1 %2; export it as one .glb file.</source>
        <translation>%1 %2; als eine einzige .glb-Datei exportieren.</translation>
    </message>
    <message>
        <source>%1 could not be read as a mesh; export it again.</source>
        <translation>%1 ließ sich nicht als Netz lesen; neu exportieren.</translation>
    </message>
    <message>
        <source>%1 could not be read as a mesh (%2); export it again.</source>
        <translation>%1 ließ sich nicht als Netz lesen (%2); neu exportieren.</translation>
    </message>
    <message>
        <source>%1 holds no triangles; choose a mesh of the head&apos;s skin.</source>
        <translation>%1 enthält keine Dreiecke; ein Netz der Haut des Kopfes wählen.</translation>
    </message>
    <message>
        <source>%1 shows no head that stands out from the air (%2); choose a scan of the whole head with air around it.</source>
        <translation>%1 zeigt keinen Kopf, der sich von der Luft abhebt (%2); einen Scan des ganzen Kopfes mit Luft ringsum wählen.</translation>
    </message>
    <message>
        <source>no air at the edges of the volume</source>
        <translation>keine Luft an den Rändern des Volumens</translation>
    </message>
    <message>
        <source>nothing is brighter than the air</source>
        <translation>nichts ist heller als die Luft</translation>
    </message>
    <message>
        <source>hardly any air around it</source>
        <translation>kaum Luft ringsum</translation>
    </message>
    <message>
        <source>what stands out is %1 x %2 x %3 mm</source>
        <translation>was sich abhebt, misst %1 x %2 x %3 mm</translation>
    </message>
    <message>
        <source>every voxel is alike</source>
        <translation>alle Voxel sind gleich</translation>
    </message>
    <message>
        <source>reading the volume</source>
        <translation>Volumen wird gelesen</translation>
    </message>
    <message>
        <source>%1 is too short or too damaged to be a NIfTI volume; export it again.</source>
        <translation>%1 ist zu kurz oder zu beschädigt für ein NIfTI-Volumen; neu exportieren.</translation>
    </message>
    <message>
        <source>%1 is a NIfTI-2 file, which is not read here; convert it to NIfTI-1.</source>
        <translation>%1 ist eine NIfTI-2-Datei, die hier nicht gelesen wird; in NIfTI-1 umwandeln.</translation>
    </message>
    <message>
        <source>%1 is not a NIfTI volume; choose a .nii or .nii.gz file.</source>
        <translation>%1 ist kein NIfTI-Volumen; eine .nii- oder .nii.gz-Datei wählen.</translation>
    </message>
    <message>
        <source>%1 keeps header and image in two files; convert it to one .nii file.</source>
        <translation>%1 hält Header und Bild in zwei Dateien; in eine einzige .nii-Datei umwandeln.</translation>
    </message>
    <message>
        <source>%1 has a damaged header (number of dimensions); export it again.</source>
        <translation>%1 hat einen beschädigten Header (Zahl der Dimensionen); neu exportieren.</translation>
    </message>
    <message>
        <source>%1 is a single picture, not a volume; choose a 3-D scan of the whole head.</source>
        <translation>%1 ist ein einzelnes Bild, kein Volumen; einen 3-D-Scan des ganzen Kopfes wählen.</translation>
    </message>
    <message>
        <source>%1 claims a side of %2 voxels; export it again.</source>
        <translation>%1 gibt eine Seite von %2 Voxeln an; neu exportieren.</translation>
    </message>
    <message>
        <source>%1 is %2 voxels long on one side, more than 1024; resample it to 1 mm.</source>
        <translation>%1 ist auf einer Seite %2 Voxel lang, mehr als 1024; auf 1 mm neu abtasten.</translation>
    </message>
    <message>
        <source>%1 gives no usable voxel size (pixdim %2); export it again.</source>
        <translation>%1 gibt keine brauchbare Voxelgröße an (pixdim %2); neu exportieren.</translation>
    </message>
    <message>
        <source>%1 holds colours, complex numbers or another kind of voxel (datatype %2) instead of intensities; export it as 16-bit numbers.</source>
        <translation>%1 enthält Farben, komplexe Zahlen oder eine andere Art von Voxeln (datatype %2) statt Intensitäten; als 16-Bit-Zahlen exportieren.</translation>
    </message>
    <message>
        <source>%1 is larger than 512 MB; resample it to 1 mm.</source>
        <translation>%1 ist größer als 512 MB; auf 1 mm neu abtasten.</translation>
    </message>
    <message>
        <source>%1 has a damaged header (where the voxels start); export it again.</source>
        <translation>%1 hat einen beschädigten Header (Beginn der Voxel); neu exportieren.</translation>
    </message>
    <message>
        <source>%1 ends before the last voxel its header promises; copy or export it again.</source>
        <translation>%1 endet vor dem letzten Voxel, das der Header verspricht; neu kopieren oder exportieren.</translation>
    </message>
    <message>
        <source>%1 holds a kind of voxel that is not read here; export it as 16-bit numbers.</source>
        <translation>%1 enthält eine Art von Voxeln, die hier nicht gelesen wird; als 16-Bit-Zahlen exportieren.</translation>
    </message>
    <message>
        <source>%1 is a folder; choose a .nii or .nii.gz file.</source>
        <translation>%1 ist ein Ordner; eine .nii- oder .nii.gz-Datei wählen.</translation>
    </message>
    <message>
        <source>%1 is not a plain file; choose a .nii or .nii.gz file.</source>
        <translation>%1 ist keine gewöhnliche Datei; eine .nii- oder .nii.gz-Datei wählen.</translation>
    </message>
    <message>
        <source>%1 cannot be opened; check who may read it.</source>
        <translation>%1 kann nicht geöffnet werden; prüfen, wer die Datei lesen darf.</translation>
    </message>
    <message>
        <source>Took the first of %1 volumes in the file.</source>
        <translation>Das erste von %1 Volumen in der Datei genommen.</translation>
    </message>
    <message>
        <source>%1 could not be read as a NIfTI volume; export it again.</source>
        <translation>%1 ließ sich nicht als NIfTI-Volumen lesen; neu exportieren.</translation>
    </message>
    <message>
        <source>The file&apos;s sform cannot be used; its qform gave the world frame.</source>
        <translation>Die sform der Datei ist unbrauchbar; das Weltkoordinatensystem stammt aus ihrer qform.</translation>
    </message>
    <message>
        <source>%1 says nowhere usable where its voxels lie (no sform or qform); export it again with its position.</source>
        <translation>%1 gibt nirgends brauchbar an, wo die Voxel liegen (weder sform noch qform); mit Lageangabe neu exportieren.</translation>
    </message>
    <message>
        <source>%1 holds no intensity that is a number; export it again.</source>
        <translation>%1 enthält keine Intensität, die eine Zahl ist; neu exportieren.</translation>
    </message>
    <message>
        <source>Took %1 voxels without a number for air.</source>
        <translation>%1 Voxel ohne Zahl als Luft genommen.</translation>
    </message>
    <message>
        <source>finding the air around the head</source>
        <translation>Luft um den Kopf wird gesucht</translation>
    </message>
    <message>
        <source>drawing the surface</source>
        <translation>Oberfläche wird gezeichnet</translation>
    </message>
    <message>
        <source>%1 shows no skin; choose a scan of the whole head.</source>
        <translation>%1 zeigt keine Haut; einen Scan des ganzen Kopfes wählen.</translation>
    </message>
    <message>
        <source>%1 has too rough a surface to be drawn with %2 triangles; smooth or resample it to 1 mm.</source>
        <translation>%1 hat eine zu raue Oberfläche, um mit %2 Dreiecken gezeichnet zu werden; glätten oder auf 1 mm neu abtasten.</translation>
    </message>
    <message>
        <source>checking the surface</source>
        <translation>Oberfläche wird geprüft</translation>
    </message>
    <message>
        <source>%1 gave a skin with holes; choose another scan.</source>
        <translation>%1 ergab eine Haut mit Löchern; einen anderen Scan wählen.</translation>
    </message>
    <message>
        <source>%1 gave no usable skin (%2); choose another scan.</source>
        <translation>%1 ergab keine brauchbare Haut (%2); einen anderen Scan wählen.</translation>
    </message>
    <message>
        <source>The result could not be written to the standard output; check where it leads.</source>
        <translation>Das Ergebnis ließ sich nicht auf die Standardausgabe schreiben; prüfen, wohin sie führt.</translation>
    </message>
    <message>
        <source>Too many files are open to start a virtual display with; close other programs and try again.</source>
        <translation>Das System stellt keine Pipe bereit, um eine virtuelle Anzeige zu starten; andere Programme schließen und erneut versuchen.</translation>
    </message>
    <message>
        <source>The system could not start a virtual display; close other programs and try again.</source>
        <translation>Das System konnte keine virtuelle Anzeige starten; andere Programme schließen und erneut versuchen.</translation>
    </message>
    <message>
        <source>There is no display to draw on and the virtual one (Xvfb) did not start; install the Debian package xvfb.</source>
        <translation>Es gibt keine Anzeige zum Zeichnen, und die virtuelle (Xvfb) ist nicht gestartet; das Debian-Paket xvfb installieren.</translation>
    </message>
    <message>
        <source>The virtual display (Xvfb) started but does not answer; try again.</source>
        <translation>Die virtuelle Anzeige (Xvfb) ist gestartet, antwortet aber nicht; erneut versuchen.</translation>
    </message>
    <message>
        <source>A picture of %1x%2 pixels cannot be drawn; choose a size from 640x480 to 4096x4096.</source>
        <translation>Ein Bild mit %1x%2 Pixeln lässt sich nicht zeichnen; eine Größe von 640x480 bis 4096x4096 wählen.</translation>
    </message>
    <message>
        <source>The display has no OpenGL 3.2, which pictures are drawn with; install the Debian package libgl1-mesa-dri.</source>
        <translation>Die Anzeige hat kein OpenGL 3.2, mit dem Bilder gezeichnet werden; das Debian-Paket libgl1-mesa-dri installieren.</translation>
    </message>
    <message>
        <source>The picture could not be read back from the graphics driver; choose a smaller --size.</source>
        <translation>Das Bild ließ sich nicht vom Grafiktreiber zurücklesen; bei --size weniger wählen.</translation>
    </message>
    <message>
        <source>The picture could not be packed as PNG; choose a smaller --size.</source>
        <translation>Das Bild ließ sich nicht als PNG packen; bei --size weniger wählen.</translation>
    </message>
    <message>
        <source>The sheet could not be drawn; there may be too little memory. Close other programs.</source>
        <translation>Das Blatt ließ sich nicht zeichnen; vielleicht fehlt Speicher. Andere Programme schließen.</translation>
    </message>
    <message>
        <source>The sheet could not be drawn; close other programs and try again.</source>
        <translation>Das Blatt ließ sich nicht zeichnen; andere Programme schließen und erneut versuchen.</translation>
    </message>
    <message>
        <source>The search grid has no spot at row %1, column %2; rows and columns run from -1 to 1.</source>
        <translation>Das Suchraster hat keinen Rasterpunkt in Reihe %1, Spalte %2; Reihen und Spalten gehen von -1 bis 1.</translation>
    </message>
    <message>
        <source>There is no display to open the window on; set DISPLAY, or use scalpmark solve or scalpmark picture.</source>
        <translation>Es gibt keine Anzeige, auf der sich das Fenster öffnen lässt; DISPLAY setzen oder scalpmark solve oder scalpmark picture verwenden.</translation>
    </message>
    <message>
        <source>The printer %1 did not take the sheet; see whether it is switched on, or save the sheet as a PDF.</source>
        <translation>Der Drucker %1 hat das Blatt nicht angenommen; nachsehen, ob er eingeschaltet ist, oder das Blatt als PDF speichern.</translation>
    </message>
    <message>
        <source>The picture could not be turned into a PNG file; try again.</source>
        <translation>Das Bild ließ sich nicht in eine PNG-Datei umwandeln; erneut versuchen.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made, so nothing is kept in case of a crash; save the case yourself.</source>
        <translation>Der Ordner %1 lässt sich nicht anlegen, daher wird für den Fall eines Absturzes nichts aufgehoben; den Fall selbst speichern.</translation>
    </message>
    <message>
        <source>%1, and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>nach vorn</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>nach hinten</translation>
    </message>
    <message>
        <source>outward</source>
        <translation>nach außen</translation>
    </message>
    <message>
        <source>toward the midline</source>
        <translation>zur Mittellinie</translation>
    </message>
    <message>
        <source>With the coil %1, its axis meets the skin %2 from the pulse point.</source>
        <translation>Ist die Spule %1, trifft ihre Achse die Haut %2 vom Impulspunkt entfernt.</translation>
    </message>
    <message>
        <source>It meets the cortex %1 from where it would with the coil held flat (on the template; a person&apos;s own brain differs).</source>
        <translation>Den Kortex trifft sie %1 von der Stelle entfernt, die sie bei flach gehaltener Spule träfe (auf der Vorlage; das eigene Gehirn eines Menschen weicht ab).</translation>
    </message>
    <message>
        <source>The coil rests on its centre.</source>
        <translation>Die Spule liegt mit der Mitte auf.</translation>
    </message>
    <message>
        <source>The %1 hits %2; watch out there.</source>
        <translation>Die Spule (%1) stößt an %2; darauf achten.</translation>
    </message>
    <message>
        <source>the scalp</source>
        <translation>die Kopfhaut</translation>
    </message>
    <message>
        <source>the left ear</source>
        <translation>das linke Ohr</translation>
    </message>
    <message>
        <source>the right ear</source>
        <translation>das rechte Ohr</translation>
    </message>
    <message>
        <source>the brow or face</source>
        <translation>Stirn oder Gesicht</translation>
    </message>
    <message>
        <source>left wing</source>
        <translation>linker Flügel</translation>
    </message>
    <message>
        <source>right wing</source>
        <translation>rechter Flügel</translation>
    </message>
    <message>
        <source>casing</source>
        <translation>Gehäuse</translation>
    </message>
    <message>
        <source>bridge</source>
        <translation>Steg</translation>
    </message>
    <message>
        <source>handle</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>have a second person feel for the nasion, the inion and both tragi before the tape is laid</source>
        <translation>Nasion, Inion und beide Tragi von einer zweiten Person ertasten lassen, bevor das Band angelegt wird</translation>
    </message>
    <message>
        <source>read every tape twice, to the millimetre</source>
        <translation>jedes Band zweimal ablesen, auf den Millimeter genau</translation>
    </message>
    <message>
        <source>use a sharp pencil and lay the coil&apos;s edge on the middle of its mark</source>
        <translation>einen spitzen Stift verwenden und die Kante der Spule auf die Mitte ihrer Marke legen</translation>
    </message>
    <message>
        <source>draw the edge mark as a line along the coil&apos;s edge, and lay the whole edge on it, so that the angle is kept</source>
        <translation>die Kantenmarke als Linie entlang der Spulenkante zeichnen und die ganze Kante darauf legen, damit der Winkel erhalten bleibt</translation>
    </message>
    <message>
        <source>make the edge mark and lay the coil by the same rule (%1) at every visit</source>
        <translation>bei jeder Sitzung nach derselben Regel (%1) die Kantenmarke zeichnen und die Spule anlegen</translation>
    </message>
    <message>
        <source>check the cap&apos;s brim and arrow against the nasion each time it is put on</source>
        <translation>Rand und Pfeil der Kappe bei jedem Aufsetzen am Nasion prüfen</translation>
    </message>
    <message>
        <source>look at the coil from the front and from the side, and close the gap on both sides alike</source>
        <translation>die Spule von vorn und von der Seite ansehen und den Spalt auf beiden Seiten gleich weit schließen</translation>
    </message>
    <message>
        <source>Finding the four points</source>
        <translation>Finden der vier Punkte</translation>
    </message>
    <message>
        <source>Reading the tape</source>
        <translation>Ablesen des Bandes</translation>
    </message>
    <message>
        <source>Pencil marks</source>
        <translation>Stiftmarken</translation>
    </message>
    <message>
        <source>Coil&apos;s angle</source>
        <translation>Winkel der Spule</translation>
    </message>
    <message>
        <source>Another marking rule</source>
        <translation>Andere Markierregel</translation>
    </message>
    <message>
        <source>Cap put on again</source>
        <translation>Kappe neu aufgesetzt</translation>
    </message>
    <message>
        <source>Coil&apos;s tilt</source>
        <translation>Kippung der Spule</translation>
    </message>
    <message>
        <source>No error is entered, so no habit would change anything.</source>
        <translation>Es ist kein Fehler eingegeben, daher würde keine Gewohnheit etwas ändern.</translation>
    </message>
    <message>
        <source>The site mark and the edge mark lie %1 cm apart, but this plan&apos;s lie %2 cm apart; check that both marks were made for this coil.</source>
        <translation>Ortsmarke und Kantenmarke liegen %1 cm auseinander, die dieses Plans aber %2 cm; prüfen, ob beide Marken für diese Spule gezeichnet wurden.</translation>
    </message>
    <message>
        <source>This edge mark lies on the face; move the mark.</source>
        <translation>Diese Kantenmarke liegt im Gesicht; die Marke verschieben.</translation>
    </message>
    <message>
        <source>The coil&apos;s edge lies past the head wherever it could reach this mark; move the mark or choose another marking rule.</source>
        <translation>Die Kante der Spule liegt überall, wo sie diese Marke erreichen könnte, jenseits des Kopfes; die Marke verschieben oder eine andere Markierregel wählen.</translation>
    </message>
    <message>
        <source>The template&apos;s brain is made anew each time, which takes some seconds, because this user has no folder to keep it in; set HOME, or leave the brain out.</source>
        <translation>Das Gehirn der Vorlage wird jedes Mal neu erstellt, was einige Sekunden dauert, weil dieser Benutzer keinen Ordner hat, in dem es bleiben kann; HOME setzen oder das Gehirn weglassen.</translation>
    </message>
    <message>
        <source>The template&apos;s brain is made anew each time, which takes some seconds, because it cannot be kept in %1; make that folder writable, or leave the brain out.</source>
        <translation>Das Gehirn der Vorlage wird jedes Mal neu erstellt, was einige Sekunden dauert, weil es nicht in %1 bleiben kann; diesen Ordner beschreibbar machen oder das Gehirn weglassen.</translation>
    </message>
    <message>
        <source>The case was written as version 1, with one marking rule (%1): it is taken for drawing the marks and for laying the coil alike.</source>
        <translation>Der Fall wurde als Version 1 mit einer einzigen Markierregel (%1) geschrieben: Sie gilt für das Zeichnen der Marken ebenso wie für das Anlegen der Spule.</translation>
    </message>
    <message>
        <source>the case</source>
        <translation>der Fall</translation>
    </message>
    <message>
        <source>the scan</source>
        <translation>der Scan</translation>
    </message>
    <message>
        <source>the MRI</source>
        <translation>das MRT</translation>
    </message>
    <message>
        <source>a file of the template</source>
        <translation>eine Datei der Vorlage</translation>
    </message>
    <message>
        <source>%1 is %2 that the result is made from, and would be replaced by it; choose another name.</source>
        <translation>%1 (%2) ist Grundlage des Ergebnisses und würde von ihm ersetzt; einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1 is a link to a file of another user, %2; write to that file by its own name, or choose another.</source>
        <translation>%1 ist eine Verknüpfung zur Datei eines anderen Benutzers, %2; diese Datei unter ihrem eigenen Namen schreiben oder eine andere wählen.</translation>
    </message>
    <message>
        <source>%1 is a link that leads to no file; remove it, or choose another name.</source>
        <translation>%1 ist eine Verknüpfung, die zu keiner Datei führt; entfernen oder einen anderen Namen wählen.</translation>
    </message>
    <message>
        <source>%1: version must be from 1 to %2, but is %3; use the program that wrote it, or a newer one.</source>
        <translation>%1: version muss zwischen 1 und %2 liegen, ist aber %3; das Programm verwenden, das die Datei geschrieben hat, oder ein neueres.</translation>
    </message>
    <message>
        <source>%1 could not be read: this run may take %2 MB of memory, and reading a head up to %3 MB; give it more, or save the head thinner in the program that made it.</source>
        <translation>%1 konnte nicht gelesen werden: Dieser Lauf darf %2 MB Speicher belegen, das Lesen eines Kopfes bis zu %3 MB; mehr zuteilen oder den Kopf im Ursprungsprogramm ausgedünnt speichern.</translation>
    </message>
    <message>
        <source>The system lets this user start no more programs, and a head is read by one of its own; close some and try again.</source>
        <translation>Das System lässt diesen Benutzer keine weiteren Programme starten, und ein Kopf wird von einem eigenen Programm gelesen; einige schließen und erneut versuchen.</translation>
    </message>
    <message>
        <source>A mark of the coil&apos;s edge falls off the head; choose another.</source>
        <translation>Eine Marke der Spulenkante liegt nicht mehr auf dem Kopf; eine andere wählen.</translation>
    </message>
    <message>
        <source>The cap would slip to where this head has no skin; take a smaller slip, or a scan that reaches lower.</source>
        <translation>Die Kappe würde dorthin verrutschen, wo dieser Kopf keine Haut hat; ein kleineres Verrutschen wählen oder einen Scan, der tiefer reicht.</translation>
    </message>
    <message>
        <source>There is too little skin above the cap&apos;s brim; set the brim lower over the nasion.</source>
        <translation>Über dem Rand der Kappe ist zu wenig Haut; den Rand niedriger über dem Nasion ansetzen.</translation>
    </message>
    <message>
        <source>The cap&apos;s brim must lie above the nasion and below the vertex, but is set %1 mm above the nasion; correct it.</source>
        <translation>Der Rand der Kappe muss über dem Nasion und unter dem Vertex liegen, ist aber %1 mm über dem Nasion angesetzt; korrigieren.</translation>
    </message>
    <message>
        <source>The skin ends before the cap&apos;s brim comes round the head; take a scan of the whole head, or set the brim higher over the nasion.</source>
        <translation>Die Haut endet, bevor der Rand der Kappe um den Kopf herumkommt; einen Scan des ganzen Kopfes wählen oder den Rand höher über dem Nasion ansetzen.</translation>
    </message>
    <message>
        <source>The cap has slipped so far that its brim lies over the vertex; put it on again.</source>
        <translation>Die Kappe ist so weit verrutscht, dass ihr Rand über dem Vertex liegt; neu aufsetzen.</translation>
    </message>
    <message>
        <source>The cap would be turned so far that its arrow no longer runs down the nose; put it on again.</source>
        <translation>Die Kappe wäre so weit gedreht, dass ihr Pfeil nicht mehr die Nase hinab verläuft; neu aufsetzen.</translation>
    </message>
    <message>
        <source>The brim&apos;s height over the %1 must be from 0 to %2 mm; measure it again.</source>
        <translation>Die Höhe des Randes über dem %1 muss 0 bis %2 mm betragen; neu messen.</translation>
    </message>
    <message>
        <source>To say how the cap has slipped takes the brim&apos;s height over two or more of nasion, inion and the two tragi; measure another.</source>
        <translation>Um zu sagen, wie die Kappe verrutscht ist, braucht es die Höhe des Randes über mindestens zwei der Punkte Nasion, Inion und der beiden Tragi; eine weitere messen.</translation>
    </message>
    <message>
        <source>The cap&apos;s arrow cannot pass more than %1 mm beside the nasion; put the cap on again.</source>
        <translation>Der Pfeil der Kappe kann höchstens %1 mm neben dem Nasion verlaufen; die Kappe neu aufsetzen.</translation>
    </message>
    <message>
        <source>The brim&apos;s heights fit no slip of a cap on this head: the nearest misses one by %1 cm; read the tapes again, and see whether it is the same cap.</source>
        <translation>Die Höhen des Randes passen zu keinem Verrutschen einer Kappe auf diesem Kopf: Das nächstliegende verfehlt eine um %1 cm; die Bänder neu ablesen und prüfen, ob es dieselbe Kappe ist.</translation>
    </message>
    <message>
        <source>The treatment&apos;s edge mark falls off the head, so the cap carries none; choose another rule or site.</source>
        <translation>Die Kantenmarke der Behandlung liegt nicht mehr auf dem Kopf, daher trägt die Kappe keine; eine andere Regel oder einen anderen Ort wählen.</translation>
    </message>
    <message>
        <source>A tape&apos;s reading error must be a length above 0; correct it.</source>
        <translation>Der Ablesefehler eines Bandes muss eine Länge über 0 sein; korrigieren.</translation>
    </message>
    <message>
        <source>The cap can be slid by at most %1 cm and turned by at most %2 degrees in this lesson; choose less.</source>
        <translation>In dieser Lektion lässt sich die Kappe um höchstens %1 cm verschieben und um höchstens %2 Grad drehen; weniger wählen.</translation>
    </message>
    <message>
        <source>The eye can be off the coil&apos;s axis by at most %1 degrees; choose less.</source>
        <translation>Das Auge kann um höchstens %1 Grad neben der Achse der Spule liegen; weniger wählen.</translation>
    </message>
    <message>
        <source>This case lays the coil by the %1 rule, not by looking past its edge; choose drop to see what a look from aside does.</source>
        <translation>In diesem Fall wird die Spule nach der %1regel angelegt, nicht mit einem Blick an ihrer Kante vorbei; Lot wählen, um zu sehen, was ein schräger Blick bewirkt.</translation>
    </message>
    <message>
        <source>Measure both again.</source>
        <translation>Beide neu messen.</translation>
    </message>
    <message>
        <source>A %1 tape of about %2 would fit the other two: measure it again.</source>
        <translation>Zu den beiden anderen würde %1 mit etwa %2 passen; neu messen.</translation>
    </message>
    <message>
        <source>The %1 tape (%2) and the %3 tape (%4) disagree: their proportion is more than 30 % off a head&apos;s. %5</source>
        <translation>Die Maße %1 (%2) und %3 (%4) widersprechen sich: Ihr Verhältnis weicht um mehr als 30 % von dem eines Kopfes ab. %5</translation>
    </message>
    <message>
        <source>No scaling of the head gives these tapes together: the %1 (%2) and the %3 (%4) disagree. %5</source>
        <translation>Der Kopf lässt sich nicht an alle diese Maße anpassen: %1 (%2) und %3 (%4) widersprechen sich. %5</translation>
    </message>
    <message>
        <source>The head would be %1 cm long, shorter than nearly all adults&apos;</source>
        <translation>Der Kopf wäre %1 cm lang, kürzer als bei fast allen Erwachsenen</translation>
    </message>
    <message>
        <source>The head would be %1 cm long, longer than nearly all adults&apos;</source>
        <translation>Der Kopf wäre %1 cm lang, länger als bei fast allen Erwachsenen</translation>
    </message>
    <message>
        <source>The head would be %1 cm wide, narrower than nearly all adults&apos;</source>
        <translation>Der Kopf wäre %1 cm breit, schmaler als bei fast allen Erwachsenen</translation>
    </message>
    <message>
        <source>The head would be %1 cm wide, wider than nearly all adults&apos;</source>
        <translation>Der Kopf wäre %1 cm breit, breiter als bei fast allen Erwachsenen</translation>
    </message>
    <message>
        <source>The head would be %1 cm high above the ears, lower than nearly all adults&apos;</source>
        <translation>Der Kopf wäre über den Ohren %1 cm hoch, niedriger als bei fast allen Erwachsenen</translation>
    </message>
    <message>
        <source>The head would be %1 cm high above the ears, higher than nearly all adults&apos;</source>
        <translation>Der Kopf wäre über den Ohren %1 cm hoch, höher als bei fast allen Erwachsenen</translation>
    </message>
    <message>
        <source>%1: measure all tapes again.</source>
        <translation>%1; alle Maße neu messen.</translation>
    </message>
    <message>
        <source>%1: measure the %2 tape again.</source>
        <translation>%1; das Maß %2 neu messen.</translation>
    </message>
    <message>
        <source>%1; a %2 tape of about %3 cm would fit the other: measure it again.</source>
        <translation>%1; zum anderen würde %2 mit etwa %3 cm passen: neu messen.</translation>
    </message>
    <message>
        <source>%1; a %2 tape of about %3 cm would fit the other two: measure it again.</source>
        <translation>%1; zu den beiden anderen würde %2 mit etwa %3 cm passen: neu messen.</translation>
    </message>
    <message>
        <source>A coil cannot be laid by so few marks; make an edge mark, and a site mark or a second edge mark.</source>
        <translation>Nach so wenigen Marken lässt sich keine Spule anlegen; eine Kantenmarke zeichnen und dazu eine Ortsmarke oder eine zweite Kantenmarke.</translation>
    </message>
    <message>
        <source>%1 is there already and holds something else; choose another name, or write --force to replace it.</source>
        <translation>%1 gibt es schon, mit anderem Inhalt; einen anderen Namen wählen oder zum Ersetzen --force schreiben.</translation>
    </message>
    <message>
        <source>Slide the cap %1 back</source>
        <translation>Die Kappe %1 nach hinten schieben</translation>
    </message>
    <message>
        <source>Slide the cap %1 forward</source>
        <translation>Die Kappe %1 nach vorn schieben</translation>
    </message>
    <message>
        <source>Slide the cap %1 to the patient&apos;s left</source>
        <translation>Die Kappe %1 zur linken Patientenseite schieben</translation>
    </message>
    <message>
        <source>Slide the cap %1 to the patient&apos;s right</source>
        <translation>Die Kappe %1 zur rechten Patientenseite schieben</translation>
    </message>
    <message>
        <source>%1 to the patient&apos;s left</source>
        <translation>%1 zur linken Patientenseite</translation>
    </message>
    <message>
        <source>%1 to the patient&apos;s right</source>
        <translation>%1 zur rechten Patientenseite</translation>
    </message>
    <message>
        <source>Turn the cap&apos;s arrow %1 degrees to the patient&apos;s left</source>
        <translation>Den Pfeil der Kappe %1 Grad zur linken Patientenseite drehen</translation>
    </message>
    <message>
        <source>Turn the cap&apos;s arrow %1 degrees to the patient&apos;s right</source>
        <translation>Den Pfeil der Kappe %1 Grad zur rechten Patientenseite drehen</translation>
    </message>
    <message>
        <source>turn its arrow %1 degrees to the patient&apos;s left</source>
        <translation>ihren Pfeil %1 Grad zur linken Patientenseite drehen</translation>
    </message>
    <message>
        <source>turn its arrow %1 degrees to the patient&apos;s right</source>
        <translation>ihren Pfeil %1 Grad zur rechten Patientenseite drehen</translation>
    </message>
    <message>
        <source>%1 forward</source>
        <translation>%1 nach vorn</translation>
    </message>
    <message>
        <source>%1 backward</source>
        <translation>%1 nach hinten</translation>
    </message>
    <message>
        <source>%1 away from the midline</source>
        <translation>%1 von der Mittellinie weg</translation>
    </message>
    <message>
        <source>%1 toward the midline</source>
        <translation>%1 zur Mittellinie hin</translation>
    </message>
    <message>
        <source>0 (it is under the brim)</source>
        <translation>0 (liegt unter dem Rand)</translation>
    </message>
    <message>
        <source>Brim %1 over the nasion, %2 over the left tragus, %3 over the right, %4 over the inion.</source>
        <translation>Rand %1 über dem Nasion, %2 über dem linken Tragus, %3 über dem rechten, %4 über dem Inion.</translation>
    </message>
    <message>
        <source>The cap sits as it should, as far as these tapes can tell: they leave the pulse uncertain by %1.</source>
        <translation>Die Kappe sitzt richtig, soweit diese Bänder es zeigen: Sie lassen den Impuls um %1 ungewiss.</translation>
    </message>
    <message>
        <source>%1; as it sits the pulse goes %2, give or take %3.</source>
        <translation>%1; so, wie sie sitzt, verschiebt sich der Impuls um %2, auf %3 genau.</translation>
    </message>
    <message>
        <source>These heights do not say whether the cap has slid forward or back; measure over nasion or inion.</source>
        <translation>Diese Höhen sagen nicht, ob die Kappe nach vorn oder nach hinten gerutscht ist; über Nasion oder Inion messen.</translation>
    </message>
    <message>
        <source>These heights do not say whether the cap has slid to a side; measure over a tragus.</source>
        <translation>Diese Höhen sagen nicht, ob die Kappe zu einer Seite gerutscht ist; über einem Tragus messen.</translation>
    </message>
    <message>
        <source>Heights hardly say whether the cap is turned: measure how far beside the nasion its arrow passes.</source>
        <translation>Höhen sagen kaum, ob die Kappe gedreht ist; messen, wie weit neben dem Nasion ihr Pfeil verläuft.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Of %1 places that fit these tapes the one nearest to the plan was taken, as was asked for (%2); the tapes do not say that the mark is there.</source>
        <translation>Von %1 Stellen, die zu diesen Bändern passen, wurde wie verlangt die dem Plan nächste genommen (%2); die Bänder sagen nicht, dass die Marke dort ist.</translation>
    </message>
    <message>
        <source>Of %1 places that fit these tapes, %2 was chosen; the tapes do not say that the mark is there.</source>
        <translation>Von %1 Stellen, die zu diesen Bändern passen, wurde %2 gewählt; die Bänder sagen nicht, dass die Marke dort ist.</translation>
    </message>
    <message>
        <source>look at every mark past the coil with one eye, straight down the coil&apos;s axis</source>
        <translation>jede Marke mit einem Auge an der Spule vorbei anblicken, gerade an der Achse der Spule entlang</translation>
    </message>
    <message>
        <source>each of the four points is felt for to %1 mm, chosen to fit what is published of positions found by hand</source>
        <translation>jeder der vier Punkte auf %1 mm genau ertastet wird, passend gewählt zu dem, was über von Hand gefundene Positionen veröffentlicht ist</translation>
    </message>
    <message>
        <source>a tape is read to %1 mm, common practice</source>
        <translation>ein Band auf %1 mm genau abgelesen wird, übliche Praxis</translation>
    </message>
    <message>
        <source>a pencil mark is off by %1 mm, a guess</source>
        <translation>eine Stiftmarke um %1 mm daneben liegt, geschätzt</translation>
    </message>
    <message>
        <source>the eye alone holds the coil&apos;s angle to %1 degrees, as was found with cap and marks</source>
        <translation>der Winkel der Spule nach Augenmaß auf %1 Grad genau gehalten wird, wie mit Kappe und Marken gefunden</translation>
    </message>
    <message>
        <source>the eye is off the coil&apos;s axis by %1 degrees, a guess</source>
        <translation>das Auge um %1 Grad neben der Achse der Spule liegt, geschätzt</translation>
    </message>
    <message>
        <source>Look past the coil</source>
        <translation>Blick an der Spule vorbei</translation>
    </message>
    <message>
        <source>Largest share, %1 %: %2. That follows from the assumption that %3.</source>
        <translation>Größter Anteil, %1 %: %2. Das folgt aus der Annahme, dass %3.</translation>
    </message>
    <message>
        <source>on the template&apos;s brain</source>
        <translation>am Gehirn der Vorlage</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>Site mark and one front mark</source>
        <translation>Ortsmarke und eine Marke vorn</translation>
    </message>
    <message>
        <source>Front mark as a line along the edge</source>
        <translation>Marke vorn als Strich entlang der Kante</translation>
    </message>
    <message>
        <source>Front mark and side mark</source>
        <translation>Marke vorn und Marke an der Seite</translation>
    </message>
    <message>
        <source>A mark at both front corners</source>
        <translation>Je eine Marke an beiden vorderen Ecken</translation>
    </message>
    <message>
        <source>The chance of an answer is %1; it must be from 0 to 1; correct it.</source>
        <translation>Die Wahrscheinlichkeit einer Antwort ist %1; sie muss 0 bis 1 betragen; korrigieren.</translation>
    </message>
    <message>
        <source>The number of pulses is %1; it must be from 0 to %2; correct it.</source>
        <translation>Die Zahl der Impulse ist %1; sie muss 0 bis %2 betragen; korrigieren.</translation>
    </message>
    <message>
        <source>A threshold&apos;s rule of %1 of %2 cannot be counted; take 5 of 10, 4 of 8 or another of up to %3 pulses.</source>
        <translation>Die Schwellenregel %1 von %2 lässt sich nicht auszählen; 5 von 10, 4 von 8 oder eine andere mit bis zu %3 Impulsen nehmen.</translation>
    </message>
    <message>
        <source>Limits from %1 of %2 visits cannot be drawn; take two visits or more of those there are.</source>
        <translation>Grenzen aus %1 von %2 Sitzungen lassen sich nicht ziehen; zwei oder mehr der vorhandenen Sitzungen nehmen.</translation>
    </message>
    <message>
        <source>The measurement of visit %1 is no number; leave the visit out.</source>
        <translation>Die Messung von Sitzung %1 ist keine Zahl; die Sitzung weglassen.</translation>
    </message>
    <message>
        <source>Steps of %1 % and, near the threshold, %2 % cannot be taken; they are from 1 to %3 %, the second no larger than the first; correct them.</source>
        <translation>Schritte von %1 % und, nahe der Schwelle, %2 % gehen nicht; sie müssen 1 bis %3 % betragen, der zweite nicht mehr als der erste; korrigieren.</translation>
    </message>
    <message>
        <source>There are %1 visits, more than %2; leave some out.</source>
        <translation>Es sind %1 Sitzungen, mehr als %2; einige weglassen.</translation>
    </message>
    <message>
        <source>The place of visit %1 is no number; leave the visit out.</source>
        <translation>Der Ort von Sitzung %1 ist keine Zahl; die Sitzung weglassen.</translation>
    </message>
    <message>
        <source>The output of pulse %1 is %2 %; it must be from %3 to %4 %; correct it.</source>
        <translation>Die Leistung von Impuls %1 ist %2 %; sie muss %3 bis %4 % betragen; korrigieren.</translation>
    </message>
    <message>
        <source>There are %1 spots, more than %2; leave some out.</source>
        <translation>Es sind %1 Rasterpunkte, mehr als %2; einige weglassen.</translation>
    </message>
    <message>
        <source>Spot %1 has %2 answers to %3 pulses; there are at most %4 pulses and no more answers; correct it.</source>
        <translation>Rasterpunkt %1 hat %2 Antworten auf %3 Impulse; es gibt höchstens %4 Impulse und nicht mehr Antworten als Impulse; korrigieren.</translation>
    </message>
    <message>
        <source>The place of spot %1 is no number; correct it.</source>
        <translation>Der Ort von Rasterpunkt %1 ist keine Zahl; korrigieren.</translation>
    </message>
    <message>
        <source>The spread of the threshold is %1; it must be from %2 to %3; correct it.</source>
        <translation>Die Streuung der Schwelle ist %1; sie muss %2 bis %3 betragen; korrigieren.</translation>
    </message>
    <message>
        <source>The grid of the threshold is %1 %; it must be from %2 to %3 %; correct it.</source>
        <translation>Die Schrittweite der Schwelle ist %1 %; sie muss %2 bis %3 % betragen; korrigieren.</translation>
    </message>
    <message>
        <source>%1; a %2 tape of about %3 cm or a %4 tape of about %5 cm would fit the others: measure both again.</source>
        <translation>%1; zu den anderen würde %2 mit etwa %3 cm oder %4 mit etwa %5 cm passen: beide neu messen.</translation>
    </message>
    <message>
        <source>Tilted this far, the coil&apos;s axis passes the head; enter a smaller tilt.</source>
        <translation>So weit gekippt geht die Achse der Spule am Kopf vorbei; eine kleinere Kippung eingeben.</translation>
    </message>
    <message>
        <source>Either tilt must be from -30 to 30 degrees; correct it.</source>
        <translation>Jede der beiden Kippungen muss -30 bis 30 Grad betragen; korrigieren.</translation>
    </message>
    <message>
        <source>The coil&apos;s field does not reach the brain of the round model head here; move the coil.</source>
        <translation>Das Feld der Spule erreicht hier das Gehirn des runden Modellkopfes nicht; die Spule verschieben.</translation>
    </message>
    <message>
        <source>The skin around the coil is not round enough for the round model head; move the coil.</source>
        <translation>Die Haut um die Spule ist für den runden Modellkopf nicht rund genug; die Spule verschieben.</translation>
    </message>
    <message>
        <source>There is too little skin around the coil for the round model head; move the coil.</source>
        <translation>Um die Spule ist für den runden Modellkopf zu wenig Haut; die Spule verschieben.</translation>
    </message>
    <message>
        <source>This point lies further from the middle of the round model head than the coil&apos;s wires do; give one inside the head.</source>
        <translation>Dieser Punkt liegt weiter von der Mitte des runden Modellkopfes entfernt als die Drähte der Spule; einen im Kopf angeben.</translation>
    </message>
    <message>
        <source>This coil&apos;s file tells of no windings, so nothing is known of its field; choose another.</source>
        <translation>Die Datei dieser Spule nennt keine Wicklungen, daher ist über ihr Feld nichts bekannt; eine andere wählen.</translation>
    </message>
    <message>
        <source>A wire of the coil runs through the middle of the round model head.</source>
        <translation>Ein Draht der Spule verläuft durch die Mitte des runden Modellkopfes.</translation>
    </message>
    <message>
        <source>With errors this large more than half of the trials fall off the head; make the errors smaller.</source>
        <translation>Bei so großen Fehlern liegt mehr als die Hälfte der Versuche nicht mehr auf dem Kopf; die Fehler verkleinern.</translation>
    </message>
    <message>
        <source>The gap can be at most %1 cm more in this lesson; choose less.</source>
        <translation>In dieser Lektion kann der Spalt höchstens %1 cm größer sein; weniger wählen.</translation>
    </message>
    <message>
        <source>No spot of the grid has answered yet: the treatment site and its marks hold only if the middle spot answers.</source>
        <translation>Noch hat kein Rasterpunkt geantwortet: Der Behandlungsort und seine Marken gelten nur, wenn der mittlere Rasterpunkt antwortet.</translation>
    </message>
    <message>
        <source>file of starting values</source>
        <translation>Datei der Startwerte</translation>
    </message>
    <message>
        <source>The starting values are missing from this program; install it again.</source>
        <translation>Die Startwerte fehlen in diesem Programm; es neu installieren.</translation>
    </message>
    <message>
        <source>Visit %1 (%2) is dated before the visit entered before it; if that is a slip, correct its date.</source>
        <translation>Sitzung %1 (%2) hat ein früheres Datum als die vor ihr eingetragene; ist das ein Versehen, das Datum korrigieren.</translation>
    </message>
    <message>
        <source>makes the fine step (%1) larger than the other (%2)</source>
        <translation>macht den feinen Schritt (%1) größer als den anderen (%2)</translation>
    </message>
    <message>
        <source>is an older word for what %1 says too; keep one of them</source>
        <translation>ist ein älteres Wort für das, was auch %1 sagt; nur eines davon behalten</translation>
    </message>
    <message>
        <source>%1, line %2: %3; correct it and read the table again.</source>
        <translation>%1, Zeile %2: %3; korrigieren und die Tabelle neu einlesen.</translation>
    </message>
    <message>
        <source>%1, line 1: &quot;%2&quot; is not a column known here (known: %3); remove it.</source>
        <translation>%1, Zeile 1: &quot;%2&quot; ist hier keine bekannte Spalte (bekannt: %3); entfernen.</translation>
    </message>
    <message>
        <source>%1, line 1: the column %2 is missing; add it.</source>
        <translation>%1, Zeile 1: Die Spalte %2 fehlt; ergänzen.</translation>
    </message>
    <message>
        <source>visit must be a whole number from 1, but is &quot;%1&quot;</source>
        <translation>visit muss eine ganze Zahl ab 1 sein, ist aber &quot;%1&quot;</translation>
    </message>
    <message>
        <source>visit is missing</source>
        <translation>visit fehlt</translation>
    </message>
    <message>
        <source>%1, line %2</source>
        <translation>%1, Zeile %2</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>visit %1 is there twice</source>
        <translation>Sitzung %1 steht zweimal da</translation>
    </message>
    <message>
        <source>there are more than %1 visits</source>
        <translation>es sind mehr als %1 Sitzungen</translation>
    </message>
    <message>
        <source>there is no visit %1</source>
        <translation>eine Sitzung %1 gibt es nicht</translation>
    </message>
    <message>
        <source>there are more than %1 pulses</source>
        <translation>es sind mehr als %1 Impulse</translation>
    </message>
    <message>
        <source>must have %1 or more lengths, but has %2</source>
        <translation>muss mindestens %1 Längen haben, hat aber %2</translation>
    </message>
    <message>
        <source>must be given for a pulse on the grid, or site for one at the treatment site</source>
        <translation>muss für einen Impuls auf dem Raster angegeben sein, oder site für einen am Behandlungsort</translation>
    </message>
    <message>
        <source>must be a time of day such as 10:32:05, but is %1</source>
        <translation>muss eine Uhrzeit wie 10:32:05 sein, ist aber %1</translation>
    </message>
    <message>
        <source>must be a date such as 2026-11-26, but is %1</source>
        <translation>muss ein Datum wie 2026-11-26 sein, ist aber %1</translation>
    </message>
    <message>
        <source>has more than %1 pulses</source>
        <translation>hat mehr als %1 Impulse</translation>
    </message>
    <message>
        <source>An answer to be written is none of the four; log the pulse again.</source>
        <translation>Eine zu schreibende Antwort ist keine der vier; den Impuls neu notieren.</translation>
    </message>
    <message>
        <source>has more than %1 visits</source>
        <translation>hat mehr als %1 Sitzungen</translation>
    </message>
    <message>
        <source>must be &quot;clockwise&quot; or &quot;counter-clockwise&quot;</source>
        <translation>muss &quot;clockwise&quot; oder &quot;counter-clockwise&quot; sein</translation>
    </message>
    <message>
        <source>%1, line %2: something follows a quotation mark that ends a cell; write two such marks for one inside, and read the table again.</source>
        <translation>%1, Zeile %2: Auf ein Anführungszeichen, das eine Zelle beendet, folgt noch etwas; für eines im Inneren zwei schreiben und die Tabelle neu einlesen.</translation>
    </message>
    <message>
        <source>%1, line %2: a quotation mark stands inside a cell that is not quoted; quote the whole cell, and read the table again.</source>
        <translation>%1, Zeile %2: In einer Zelle ohne Anführungszeichen außen steht innen eines; die ganze Zelle in Anführungszeichen setzen und die Tabelle neu einlesen.</translation>
    </message>
    <message>
        <source>%1, line %2: a quotation mark begins a cell that never ends; add the second, and read the table again.</source>
        <translation>%1, Zeile %2: Ein Anführungszeichen beginnt eine Zelle, die nie endet; das zweite ergänzen und die Tabelle neu einlesen.</translation>
    </message>
    <message>
        <source>%1 is no table: it holds zero bytes, as no text does; choose another file.</source>
        <translation>%1 ist keine Tabelle: Die Datei enthält Nullbytes, was in Text nicht vorkommt; eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>%1 is not UTF-8; save it as UTF-8 and read the table again.</source>
        <translation>%1 ist nicht UTF-8; als UTF-8 speichern und die Tabelle neu einlesen.</translation>
    </message>
    <message>
        <source>%1 has semicolons between its columns; save it with commas between them and points before decimals.</source>
        <translation>%1 hat Semikolons zwischen den Spalten; mit Kommas dazwischen und Punkten als Dezimalzeichen speichern.</translation>
    </message>
    <message>
        <source>%1, line 1: the column &quot;%2&quot; is there twice; keep one.</source>
        <translation>%1, Zeile 1: Die Spalte &quot;%2&quot; steht zweimal da; nur eine behalten.</translation>
    </message>
    <message>
        <source>%1, line %2 has %3 cells, but there are %4 columns; correct it and read the table again.</source>
        <translation>%1, Zeile %2 hat %3 Zellen, es gibt aber %4 Spalten; korrigieren und die Tabelle neu einlesen.</translation>
    </message>
    <message>
        <source>%1 is empty; choose a table whose first line names its columns.</source>
        <translation>%1 ist leer; eine Tabelle wählen, deren erste Zeile die Spalten nennt.</translation>
    </message>
    <message>
        <source>must be true or false, but is %1</source>
        <translation>muss true oder false sein, ist aber %1</translation>
    </message>
    <message>
        <source>must be two whole numbers from %1 to %2, but is %3</source>
        <translation>muss aus zwei ganzen Zahlen von %1 bis %2 bestehen, ist aber %3</translation>
    </message>
    <message>
        <source>No visit of the case has pulses, so there are no answers; log them in the window under Pulses, or add a table of them with scalpmark log.</source>
        <translation>Keine Sitzung des Falls hat Impulse, daher gibt es keine Antworten; sie im Fenster unter „Impulse“ notieren oder mit scalpmark log eine Tabelle davon hinzufügen.</translation>
    </message>
    <message>
        <source>the table</source>
        <translation>die Tabelle</translation>
    </message>
    <message>
        <source>The handout&apos;s words do not fit on one page; choose larger paper.</source>
        <translation>Der Text des Merkblatts passt nicht auf eine Seite; größeres Papier wählen.</translation>
    </message>
    <message>
        <source>The strips could not be drawn; close other programs and try again.</source>
        <translation>Die Streifen ließen sich nicht zeichnen; andere Programme schließen und erneut versuchen.</translation>
    </message>
    <message>
        <source>over 99 in 100</source>
        <translation>über 99 von 100</translation>
    </message>
    <message>
        <source>under 1 in 100</source>
        <translation>unter 1 von 100</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 von 100</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>inward</source>
        <translation>nach innen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>thumb</source>
        <translation>Daumen</translation>
    </message>
    <message>
        <source>index finger</source>
        <translation>Zeigefinger</translation>
    </message>
    <message>
        <source>other</source>
        <translation>andere</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>No pulse on the grid yet.</source>
        <translation>Noch kein Impuls auf dem Raster.</translation>
    </message>
    <message>
        <source>Nothing answered on the grid at %1 %; no spot is better than another.</source>
        <translation>Auf dem Raster gab es bei %1 % keine Antwort; kein Rasterpunkt ist besser als ein anderer.</translation>
    </message>
    <message>
        <source>A pulse at %1 % would tell most about the place here: %2.</source>
        <translation>Ein Impuls bei %1 % würde hier am meisten über den Ort sagen: %2.</translation>
    </message>
    <message>
        <source>met</source>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>can no longer be met</source>
        <translation>nicht mehr erfüllbar</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>%1 %: %2 of %3, %4</source>
        <translation>%1 %: %2 von %3, %4</translation>
    </message>
    <message>
        <source>Threshold by counting %1: %2 %, after %3 pulses.</source>
        <translation>Schwelle durch Auszählen, %1: %2 %, nach %3 Impulsen.</translation>
    </message>
    <message>
        <source>Counting %1: no pulse yet.</source>
        <translation>Auszählen, %1: noch kein Impuls.</translation>
    </message>
    <message>
        <source>Counting %1 is open after %2 pulses; next to try: %3 %.</source>
        <translation>Auszählen, %1: nach %2 Impulsen offen; als Nächstes versuchen: %3 %.</translation>
    </message>
    <message>
        <source>No estimate without pulses.</source>
        <translation>Ohne Impulse keine Schätzung.</translation>
    </message>
    <message>
        <source>Estimate: all %1 pulses were answered; the threshold lies below, nobody knows by how much.</source>
        <translation>Schätzung: Alle %1 Impulse wurden beantwortet; die Schwelle liegt darunter, wie weit, weiß niemand.</translation>
    </message>
    <message>
        <source>Estimate: none of %1 pulses was answered; the threshold lies above, nobody knows by how much.</source>
        <translation>Schätzung: Von %1 Impulsen wurde keiner beantwortet; die Schwelle liegt darüber, wie weit, weiß niemand.</translation>
    </message>
    <message>
        <source>Estimate from all %1 pulses: %2 %, 95 of 100 from %3 to %4 %.</source>
        <translation>Schätzung aus allen %1 Impulsen: %2 %, in 95 von 100 Fällen %3 bis %4 %.</translation>
    </message>
    <message>
        <source>A threshold read by eye is on average 11.3 % above one by EMG, up to 27.8 % (Westin et al. 2014). The prescriber decides threshold and dose.</source>
        <translation>Eine nach Augenmaß bestimmte Schwelle liegt im Mittel 11,3 % über einer per EMG bestimmten, höchstens 27,8 % (Westin et al. 2014). Über Schwelle und Dosis entscheidet die verordnende Fachkraft.</translation>
    </message>
    <message>
        <source>%1; as it sits the pulse still goes where it is wanted, give or take %2.</source>
        <translation>%1; so, wie sie sitzt, geht der Impuls noch dorthin, wo er gewollt ist, auf %2 genau.</translation>
    </message>
    <message>
        <source>%1 degrees away from the midline</source>
        <translation>%1 Grad von der Mittellinie weg</translation>
    </message>
    <message>
        <source>%1 degrees to the midline</source>
        <translation>%1 Grad zur Mittellinie</translation>
    </message>
    <message>
        <source>the coil stands at %1, as wanted</source>
        <translation>die Spule steht %1, wie gewollt</translation>
    </message>
    <message>
        <source>the coil stands at %1, %2 degrees too far away from the midline</source>
        <translation>die Spule steht %1, %2 Grad zu weit von der Mittellinie weg</translation>
    </message>
    <message>
        <source>the coil stands at %1, %2 degrees too far toward the midline</source>
        <translation>die Spule steht %1, %2 Grad zu weit zur Mittellinie hin</translation>
    </message>
    <message>
        <source>the pulse goes %1 from the site</source>
        <translation>der Impuls liegt %1 vom Ort entfernt</translation>
    </message>
    <message>
        <source>turned %1 degrees away from the midline</source>
        <translation>um %1 Grad von der Mittellinie weg drehen</translation>
    </message>
    <message>
        <source>turned %1 degrees toward the midline</source>
        <translation>um %1 Grad zur Mittellinie hin drehen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The marks agree with the plan: laid by them, %1, and %2.</source>
        <translation>Die Marken stimmen mit dem Plan überein: Ist die Spule nach ihnen angelegt, gilt: %1, und %2.</translation>
    </message>
    <message>
        <source>Move the coil: %1; then draw both marks new. As they are, %2, and %3 are allowed.</source>
        <translation>Die Spule verschieben: %1; dann beide Marken neu zeichnen. So, wie sie sind: %2, und erlaubt sind %3.</translation>
    </message>
    <message>
        <source>Turn the coil over the site mark: %1; then draw the edge mark new. As it is, %2, and %3 degrees are allowed.</source>
        <translation>Die Spule über der Ortsmarke drehen: %1; dann die Kantenmarke neu zeichnen. So, wie sie ist: %2, und erlaubt sind %3 Grad.</translation>
    </message>
    <message>
        <source>Move and turn the coil: %1; then draw both marks new. As they are, %2 (%3 allowed), and %4 (%5 degrees allowed).</source>
        <translation>Die Spule verschieben und drehen: %1; dann beide Marken neu zeichnen. So, wie sie sind: %2 (%3 erlaubt), und %4 (%5 Grad erlaubt).</translation>
    </message>
    <message>
        <source>By hand, expect about %1.</source>
        <translation>Von Hand ist mit etwa %1 zu rechnen.</translation>
    </message>
    <message>
        <source>By hand, expect about %1: half of the trials lie within %2, 95 of 100 within %3.</source>
        <translation>Von Hand ist mit etwa %1 zu rechnen: Die Hälfte der Versuche liegt höchstens %2 daneben, 95 von 100 höchstens %3.</translation>
    </message>
    <message>
        <source>tilted by %1 degrees, its right side down</source>
        <translation>um %1 Grad mit der rechten Seite nach unten gekippt</translation>
    </message>
    <message>
        <source>tilted by %1 degrees, its left side down</source>
        <translation>um %1 Grad mit der linken Seite nach unten gekippt</translation>
    </message>
    <message>
        <source>tilted by %1 degrees, its front edge up</source>
        <translation>um %1 Grad mit der Vorderkante nach oben gekippt</translation>
    </message>
    <message>
        <source>tilted by %1 degrees, its front edge down</source>
        <translation>um %1 Grad mit der Vorderkante nach unten gekippt</translation>
    </message>
    <message>
        <source>%1 %2 and %3</source>
        <translation>%1 %2 und %3</translation>
    </message>
    <message>
        <source>The coil rests on both wings; its centre is %1 clear of the skin.</source>
        <translation>Die Spule liegt auf beiden Flügeln auf; ihre Mitte ist %1 von der Haut entfernt.</translation>
    </message>
    <message>
        <source>The coil rests on its wings, first on its %1; its centre is %2 clear of the skin.</source>
        <translation>Die Spule liegt auf den Flügeln auf (zuerst: %1); ihre Mitte ist %2 von der Haut entfernt.</translation>
    </message>
    <message>
        <source>The coil rests on its %1, away from its centre; its centre is %2 clear of the skin.</source>
        <translation>Die Spule liegt nicht mit der Mitte auf (Auflage: %1); ihre Mitte ist %2 von der Haut entfernt.</translation>
    </message>
    <message>
        <source>Tilted by %1 degrees, its right side down, it would rest on both wings.</source>
        <translation>Um %1 Grad mit der rechten Seite nach unten gekippt, läge sie auf beiden Flügeln auf.</translation>
    </message>
    <message>
        <source>Tilted by %1 degrees, its left side down, it would rest on both wings.</source>
        <translation>Um %1 Grad mit der linken Seite nach unten gekippt, läge sie auf beiden Flügeln auf.</translation>
    </message>
    <message>
        <source>Under the %1 the gap is %2 to %3, %4 under its middle.</source>
        <translation>Spalt zur Haut (%1): %2 bis %3, unter der Mitte %4.</translation>
    </message>
    <message>
        <source>Under the %1 the gap is %2 to %3.</source>
        <translation>Spalt zur Haut (%1): %2 bis %3.</translation>
    </message>
    <message>
        <source>A cap of %1 would be pressed in by %2; enter its thickness for cap and hair.</source>
        <translation>Eine Kappe von %1 würde um %2 eingedrückt; ihre Dicke bei „Kappe und Haar“ eingeben.</translation>
    </message>
    <message>
        <source>%1 visits with known marks; a drift shows from %2 on.</source>
        <translation>%1 Sitzungen mit bekannten Marken; eine Drift zeigt sich ab %2.</translation>
    </message>
    <message>
        <source>No drift shows in %1 visits.</source>
        <translation>In %1 Sitzungen zeigt sich keine Drift.</translation>
    </message>
    <message>
        <source>The last %1 visits lie %2 in front of the first %3: a mark has crept, or the cap sits further forward.</source>
        <translation>Die letzten %1 Sitzungen liegen %2 vor den ersten %3: Eine Marke ist gewandert, oder die Kappe sitzt weiter vorn.</translation>
    </message>
    <message>
        <source>The last %1 visits lie %2 behind the first %3: a mark has crept, or the cap sits further back.</source>
        <translation>Die letzten %1 Sitzungen liegen %2 hinter den ersten %3: Eine Marke ist gewandert, oder die Kappe sitzt weiter hinten.</translation>
    </message>
    <message>
        <source>In the last %1 visits the coil is turned %2 further to the midline than in the first %3.</source>
        <translation>In den letzten %1 Sitzungen ist die Spule %2 weiter zur Mittellinie hin gedreht als in den ersten %3.</translation>
    </message>
    <message>
        <source>In the last %1 visits the coil is turned %2 further from the midline than in the first %3.</source>
        <translation>In den letzten %1 Sitzungen ist die Spule %2 weiter von der Mittellinie weg gedreht als in den ersten %3.</translation>
    </message>
    <message>
        <source>Limits need two visits with known marks or more.</source>
        <translation>Grenzen brauchen mindestens zwei Sitzungen mit bekannten Marken.</translation>
    </message>
    <message>
        <source>In a round model head (radius %1 cm; the skin around the coil lies off it by %2 mm on average).</source>
        <translation>In einem runden Modellkopf (Radius %1 cm; die Haut um die Spule weicht im Mittel %2 mm von ihm ab).</translation>
    </message>
    <message>
        <source>In it the field is strongest %1 cm from the pulse point (%2), and has more than 71 % of that over %3 cm², more than half over %4 cm².</source>
        <translation>Darin ist das Feld %1 cm vom Impulspunkt am stärksten (%2) und hat mehr als 71 % davon auf %3 cm², mehr als die Hälfte auf %4 cm².</translation>
    </message>
    <message>
        <source>Strongest %1 cm from the pulse point; over 71 % of that on %2 cm², over half on %3 cm².</source>
        <translation>Am stärksten %1 cm vom Impulspunkt; über 71 % davon auf %2 cm², über die Hälfte auf %3 cm².</translation>
    </message>
    <message>
        <source>a large coin</source>
        <translation>eine große Münze</translation>
    </message>
    <message>
        <source>a walnut</source>
        <translation>eine Walnuss</translation>
    </message>
    <message>
        <source>a hen&apos;s egg</source>
        <translation>ein Hühnerei</translation>
    </message>
    <message>
        <source>a playing card</source>
        <translation>eine Spielkarte</translation>
    </message>
    <message>
        <source>the palm of a hand</source>
        <translation>eine Handfläche</translation>
    </message>
    <message>
        <source>It is strongest around the coil&apos;s axis, %1 cm away from it, not under its centre, and its line runs around the axis.</source>
        <translation>Am stärksten ist es rings um die Achse der Spule, %1 cm von ihr entfernt, nicht unter ihrer Mitte, und seine Linie verläuft rings um die Achse.</translation>
    </message>
    <message>
        <source>Not this patient&apos;s field: no dose, no depth reached and no effect follow from it. Training and illustration only.</source>
        <translation>Nicht das Feld dieses Patienten: Daraus folgen keine Dosis, keine erreichte Tiefe und keine Wirkung. Nur zur Schulung und Veranschaulichung.</translation>
    </message>
    <message>
        <source>These tapes fit %1 places, up to %2 apart; choose the one where the mark is, or measure one more tape.</source>
        <translation>Diese Bänder passen zu %1 Stellen, bis zu %2 auseinander; die wählen, an der die Marke ist, oder ein weiteres Band messen.</translation>
    </message>
    <message>
        <source>The mark is within %1 of where these tapes meet, 95 times of 100.</source>
        <translation>Die Marke liegt in 95 von 100 Fällen höchstens %1 von dort, wo sich diese Bänder treffen.</translation>
    </message>
    <message>
        <source>in %1 of 100 trials another rule is used, a guess</source>
        <translation>in %1 von 100 Versuchen eine andere Regel verwendet wird, geschätzt</translation>
    </message>
    <message>
        <source>the cap put on again has slid by %1 mm forward or back and %2 mm to a side and turned by %3 degrees, all guesses</source>
        <translation>die neu aufgesetzte Kappe um %1 mm nach vorn oder hinten und um %2 mm zu einer Seite gerutscht und um %3 Grad gedreht ist, alles geschätzt</translation>
    </message>
    <message>
        <source>the coil tilts by %1 degrees to a side and by as much to front or handle, as was found with cap and marks</source>
        <translation>die Spule um %1 Grad zu einer Seite und ebenso weit nach vorn oder zum Griff hin kippt, wie mit Kappe und Marken gefunden</translation>
    </message>
    <message>
        <source>Half of the trials lie within %1 of the site, 95 of 100 within %2.</source>
        <translation>Die Hälfte der Versuche liegt höchstens %1 vom Ort entfernt, 95 von 100 höchstens %2.</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Left out, as their marks fall off this head: %1.</source>
        <translation>Weggelassen, weil ihre Marken nicht auf diesem Kopf liegen: %1.</translation>
    </message>
    <message>
        <source>There is not enough memory for this; close other programs or use a smaller file.</source>
        <translation>Dafür reicht der Speicher nicht; andere Programme schließen oder eine kleinere Datei verwenden.</translation>
    </message>
    <message>
        <source>This user may start no more programs or threads on this computer; close other programs, or allow more (ulimit -u).</source>
        <translation>Dieser Benutzer darf auf diesem Rechner keine weiteren Programme oder Threads starten; andere Programme schließen oder mehr erlauben (ulimit -u).</translation>
    </message>
    <message>
        <source>A part of the system failed (%1); try again.</source>
        <translation>Ein Teil des Systems hat versagt (%1); erneut versuchen.</translation>
    </message>
    <message>
        <source>The search is on the patient&apos;s left side, but %1 lies on the right: the coil is laid on the right.</source>
        <translation>Die Suche ist auf der linken Patientenseite, aber %1 liegt auf der rechten: Die Spule wird rechts angelegt.</translation>
    </message>
    <message>
        <source>The search is on the patient&apos;s right side, but %1 lies on the left: the coil is laid on the left.</source>
        <translation>Die Suche ist auf der rechten Patientenseite, aber %1 liegt auf der linken: Die Spule wird links angelegt.</translation>
    </message>
    <message>
        <source>must not be given together with spot; a pulse is at one of them</source>
        <translation>darf nicht zusammen mit spot angegeben werden; ein Puls ist an einem von beiden</translation>
    </message>
    <message>
        <source>Hardly any adult&apos;s head has these lengths together</source>
        <translation>Kaum ein Kopf eines Erwachsenen hat diese Maße zusammen</translation>
    </message>
    <message>
        <source>The fine step (%1 %) is larger than the step (%2 %); make answers.fine_percent smaller.</source>
        <translation>Der feine Schritt (%1 %) ist größer als der Schritt (%2 %); answers.fine_percent verkleinern.</translation>
    </message>
    <message>
        <source>With edge marks drawn by the %1 rule and the coil laid over them by the %2 rule, the pulse at %3 lands %4 cm from the point that was wanted; draw and lay by one rule.</source>
        <translation>Mit Kantenmarken nach der %1-Regel und einer Spule, die nach der %2-Regel darüber angelegt wird, landet der Impuls bei %3 %4 cm neben dem gewollten Punkt; nach einer Regel zeichnen und anlegen.</translation>
    </message>
    <message>
        <source>This older case gives one error for the cap (%1 mm): it is used for sliding forward or back and to a side, with %2 degrees of turning.</source>
        <translation>Dieser ältere Fall gibt für die Kappe einen Fehler an (%1 mm): er gilt für das Rutschen nach vorn oder hinten und zur Seite, mit %2 Grad Drehung.</translation>
    </message>
    <message>
        <source>%1 and %2 of the start&apos;s pulse</source>
        <translation>%1 und %2 vom Impulspunkt des Starts</translation>
    </message>
    <message>
        <source>Best spot so far at %1 %: %2 (%3 of %4 answered); the chance that it is the best of the nine is %5.</source>
        <translation>Bester Rasterpunkt bisher bei %1 %: %2 (%3 von %4 beantwortet); die Wahrscheinlichkeit, dass er der beste der neun ist, beträgt %5.</translation>
    </message>
    <message>
        <source>Centre of the answers: %1 and %2 of the start, two times of three within %3 and %4; it is pulled toward the middle of the grid.</source>
        <translation>Schwerpunkt der Antworten: %1 und %2 vom Suchstart, in zwei von drei Fällen höchstens %3 und %4 daneben; er wird zur Mitte des Rasters hin gezogen.</translation>
    </message>
    <message>
        <source>Counting %1: met at the lowest output already; the threshold is no higher.</source>
        <translation>Auszählen %1: schon bei der niedrigsten Leistung erfüllt; die Schwelle liegt nicht höher.</translation>
    </message>
    <message>
        <source>Counting %1: not met at the highest output; the threshold is above it.</source>
        <translation>Auszählen %1: bei der höchsten Leistung nicht erfüllt; die Schwelle liegt darüber.</translation>
    </message>
    <message>
        <source>Chance alone: an output at which 40 of 100 pulses are answered still passes %1 in %2 of 100 tries.</source>
        <translation>Zufall allein: Eine Leistung, bei der 40 von 100 Impulsen beantwortet werden, besteht %1 trotzdem in %2 von 100 Versuchen.</translation>
    </message>
    <message>
        <source>The %1 hits %2, which holds the coil %3 further off; turn the coil, or ask the prescriber about the site.</source>
        <translation>Teil der Spule (%1) stößt an (%2), was die Spule %3 weiter entfernt hält; die Spule drehen oder die verordnende Fachkraft nach dem Ort fragen.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 degrees</source>
        <translation>%1 Grad</translation>
    </message>
    <message>
        <source>%1 to %2 degrees</source>
        <translation>%1 bis %2 Grad</translation>
    </message>
    <message>
        <source>Of 100 courses in which nothing changed, chance alone would have this said of %1.</source>
        <translation>Von 100 Verläufen, in denen sich nichts geändert hat, würde das durch Zufall allein von %1 gesagt.</translation>
    </message>
    <message>
        <source>The last %1 visits lie %2 nearer the midline than the first %3: a mark has crept, or the cap sits further to the other side.</source>
        <translation>Die letzten %1 Sitzungen liegen %2 näher an der Mittellinie als die ersten %3: Eine Marke ist gewandert, oder die Kappe sitzt weiter zur anderen Seite.</translation>
    </message>
    <message>
        <source>The last %1 visits lie %2 further from the midline than the first %3: a mark has crept, or the cap sits further to that side.</source>
        <translation>Die letzten %1 Sitzungen liegen %2 weiter von der Mittellinie entfernt als die ersten %3: Eine Marke ist gewandert, oder die Kappe sitzt weiter zu dieser Seite.</translation>
    </message>
    <message>
        <source>Usual here: up to %1 from the site, angle from %2 to %3 degrees off (for a single visit, from the first %4 visits).</source>
        <translation>Hier üblich: bis %1 vom Ort, Winkel von %2 bis %3 Grad daneben (für eine einzelne Sitzung, aus den ersten %4 Sitzungen).</translation>
    </message>
    <message>
        <source>Its line there runs along the coil&apos;s front axis; in which direction the current runs along it depends on the device.</source>
        <translation>Seine Linie verläuft dort längs der Frontachse der Spule; in welche Richtung der Strom auf ihr fließt, hängt vom Gerät ab.</translation>
    </message>
    <message>
        <source>Its line there runs %1 degrees to the right of the coil&apos;s front axis; in which direction the current runs along it depends on the device.</source>
        <translation>Seine Linie verläuft dort %1 Grad rechts der Frontachse der Spule; in welche Richtung der Strom auf ihr fließt, hängt vom Gerät ab.</translation>
    </message>
    <message>
        <source>Its line there runs %1 degrees to the left of the coil&apos;s front axis; in which direction the current runs along it depends on the device.</source>
        <translation>Seine Linie verläuft dort %1 Grad links der Frontachse der Spule; in welche Richtung der Strom auf ihr fließt, hängt vom Gerät ab.</translation>
    </message>
    <message>
        <source>These tapes cross at a sharp angle, and the mark may be %1 off; measure one more tape.</source>
        <translation>Diese Bänder kreuzen sich in spitzem Winkel, und die Marke kann %1 daneben liegen; ein weiteres Band messen.</translation>
    </message>
    <message>
        <source>the tapes miss it by %1 at most; sure to %2</source>
        <translation>die Bänder verfehlen sie um höchstens %1; auf %2 sicher</translation>
    </message>
    <message>
        <source>At the cortex, %1 under the skin (%2), the place where the field is strongest in a round model head is %3 off on average.</source>
        <translation>Am Kortex, %1 unter der Haut (%2), liegt die Stelle, an der das Feld in einem runden Modellkopf am stärksten ist, im Mittel %3 daneben.</translation>
    </message>
    <message>
        <source>At the cortex, %1 under the skin (%2), %3 on average.</source>
        <translation>Am Kortex, %1 unter der Haut (%2), im Mittel %3.</translation>
    </message>
    <message>
        <source>Of the field at the wanted place, in a round model head, half of the trials leave at least %1 %, 95 of 100 at least %2 %.</source>
        <translation>Vom Feld an der gewollten Stelle lassen in einem runden Modellkopf die Hälfte der Versuche mindestens %1 % übrig, 95 von 100 mindestens %2 %.</translation>
    </message>
    <message>
        <source>Best way to mark on this head, with these errors: %1 (%2 and %3 degrees off on average).</source>
        <translation>Beste Art zu markieren auf diesem Kopf, mit diesen Fehlern: %1 (im Mittel %2 und %3 Grad daneben).</translation>
    </message>
    <message>
        <source>The habit that would help most: %1 (half that error, and %2 on average become %3).</source>
        <translation>Die Gewohnheit, die am meisten hülfe: %1 (mit halbem Fehler werden aus %2 im Mittel %3).</translation>
    </message>
    <message>
        <source>The step &quot;%1&quot; does not ask for that; put down what it asks for.</source>
        <translation>Der Schritt „%1“ verlangt das nicht; angeben, was er verlangt.</translation>
    </message>
    <message>
        <source>The place put down for &quot;%1&quot; is no place on a head; put it down again.</source>
        <translation>Die Stelle für „%1“ liegt auf keinem Kopf; noch einmal setzen.</translation>
    </message>
    <message>
        <source>The tape was read as %1 cm; a tape on a head reads %2 to %3 cm.</source>
        <translation>Abgelesen wurden %1 cm; an einem Kopf zeigt ein Band %2 bis %3 cm.</translation>
    </message>
    <message>
        <source>The tape for &quot;%1&quot; is held at %2 points; %3 are enough.</source>
        <translation>Das Band für „%1“ wird an %2 Punkten gehalten; %3 genügen.</translation>
    </message>
    <message>
        <source>The coil was laid at %1 degrees; an angle is from %2 to %3.</source>
        <translation>Die Spule wurde bei %1 Grad angelegt; ein Winkel liegt zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>No head could be drawn for this number: the head to be scaled has no usual tapes; use another.</source>
        <translation>Zu dieser Zahl ließ sich kein Kopf ziehen: Der zu skalierende Kopf hat keine üblichen Maße; einen anderen verwenden.</translation>
    </message>
    <message>
        <source>The exercise has no task; choose one or more.</source>
        <translation>Die Übung hat keine Aufgabe; mindestens eine wählen.</translation>
    </message>
    <message>
        <source>The exercise&apos;s task &quot;%1&quot; comes after &quot;%2&quot;; give each task once, in the order of the trade.</source>
        <translation>Die Aufgabe „%1“ der Übung kommt nach „%2“; jede Aufgabe einmal nennen, in der Reihenfolge der Arbeit.</translation>
    </message>
    <message>
        <source>The exercise&apos;s title has %1 characters; %2 are the most.</source>
        <translation>Der Titel der Übung hat %1 Zeichen; höchstens %2 sind möglich.</translation>
    </message>
    <message>
        <source>The exercise&apos;s number is %1; it must be from 0 to %2.</source>
        <translation>Die Zahl der Übung ist %1; sie muss zwischen 0 und %2 liegen.</translation>
    </message>
    <message>
        <source>The exercise&apos;s time limit is %1 minutes; it must be from 1 to %2.</source>
        <translation>Die Zeit der Übung ist auf %1 Minuten begrenzt; möglich sind 1 bis %2.</translation>
    </message>
    <message>
        <source>The exercise allows %1 tries; it must be from 1 to %2.</source>
        <translation>Die Übung erlaubt %1 Durchgänge; möglich sind 1 bis %2.</translation>
    </message>
    <message>
        <source>A tape is held at two points or more; give it another.</source>
        <translation>Ein Band wird an mindestens zwei Punkten gehalten; einen weiteren angeben.</translation>
    </message>
    <message>
        <source>Two points that the tape is held at lie in one place; pull it on from there.</source>
        <translation>Zwei Punkte, an denen das Band gehalten wird, liegen an einer Stelle; von dort weiterziehen.</translation>
    </message>
    <message>
        <source>An edge mark of this case falls off the head, so nobody can draw it; choose another marking rule, angle or site for the exercise.</source>
        <translation>Eine Kantenmarke dieses Falls liegt nicht auf dem Kopf, niemand kann sie zeichnen; für die Übung eine andere Markierungsregel, einen anderen Winkel oder Ort wählen.</translation>
    </message>
    <message>
        <source>This treatment site is a landmark, so it does not hang on which spot of the search answers.</source>
        <translation>Dieser Behandlungsort ist eine Landmarke und hängt nicht davon ab, welcher Rasterpunkt der Suche antwortet.</translation>
    </message>
    <message>
        <source>The limits of the check must be more than 0, the distance and the angle; correct them.</source>
        <translation>Die Grenzen der Prüfung müssen größer als 0 sein, Abstand wie Winkel; korrigieren.</translation>
    </message>
    <message>
        <source>A coil is laid by one rule; choose another mistake beside the first rule.</source>
        <translation>Eine Spule wird nach einer einzigen Regel angelegt; neben der ersten Regel einen anderen Fehler wählen.</translation>
    </message>
    <message>
        <source>The errors of gluing and of laying a strip must be from 0 to %1 mm; correct them.</source>
        <translation>Die Fehler beim Kleben und beim Anlegen eines Streifens müssen zwischen 0 und %1 mm liegen; berichtigen.</translation>
    </message>
    <message>
        <source>exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>head drawn for the number %1</source>
        <translation>gezogener Kopf zur Zahl %1</translation>
    </message>
    <message>
        <source>the exercise</source>
        <translation>die Übung</translation>
    </message>
    <message>
        <source>must be a list of tasks in the order of the trade (%1)</source>
        <translation>muss eine Liste von Aufgaben in der Reihenfolge der Arbeit sein (%1)</translation>
    </message>
    <message>
        <source>belongs to a generic head of the case&apos;s own alone</source>
        <translation>gehört nur zu einem generischen Kopf des eigenen Falls</translation>
    </message>
    <message>
        <source>must be a step of this exercise, but is %1</source>
        <translation>muss ein Schritt dieser Übung sein, ist aber %1</translation>
    </message>
    <message>
        <source>is there twice (%1); keep one of them</source>
        <translation>ist doppelt vorhanden (%1); einen davon behalten</translation>
    </message>
    <message>
        <source>does not go with the step %1</source>
        <translation>passt nicht zum Schritt %1</translation>
    </message>
    <message>
        <source>is held at no places of a head, or at too many</source>
        <translation>wird an keinen Stellen eines Kopfes gehalten oder an zu vielen</translation>
    </message>
    <message>
        <source>must be a place on a head, but is %1</source>
        <translation>muss eine Stelle auf einem Kopf sein, ist aber %1</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>has more than %1 attempts</source>
        <translation>hat mehr als %1 Durchgänge</translation>
    </message>
    <message>
        <source>Cut flat at this height nothing is cut off the head, or all of it; choose another height.</source>
        <translation>In dieser Höhe flach geschnitten bliebe der Kopf ganz, oder nichts von ihm; eine andere Höhe wählen.</translation>
    </message>
    <message>
        <source>The head could not be written as glTF; close other programs and try again.</source>
        <translation>Der Kopf konnte nicht als glTF geschrieben werden; andere Programme schließen und erneut versuchen.</translation>
    </message>
    <message>
        <source>%1 is not the size of a head (%2 cm from corner to corner, where %3 to %4 cm would do); check the unit or choose another mesh.</source>
        <translation>%1 hat nicht die Größe eines Kopfes (%2 cm von Ecke zu Ecke, möglich sind %3 bis %4 cm); die Einheit prüfen oder ein anderes Netz wählen.</translation>
    </message>
    <message>
        <source>The file holds the face of the person who was scanned; give it to nobody who must not know them.</source>
        <translation>Die Datei enthält das Gesicht der gescannten Person; niemandem geben, der sie nicht erkennen darf.</translation>
    </message>
    <message>
        <source>a result</source>
        <translation>ein Ergebnis</translation>
    </message>
    <message>
        <source>The head in this page is damaged; have the page written again.</source>
        <translation>Der Kopf in dieser Seite ist beschädigt; die Seite neu schreiben lassen.</translation>
    </message>
    <message>
        <source>What a page for a browser is made of is damaged; run scripts/build release page_parts, and try again.</source>
        <translation>Die Teile, aus denen eine Seite für den Browser gemacht wird, sind beschädigt; scripts/build release page_parts ausführen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Drawing the page</source>
        <translation>Die Seite wird gezeichnet</translation>
    </message>
    <message>
        <source>Thinning the skin for a page</source>
        <translation>Die Haut wird für eine Seite ausgedünnt</translation>
    </message>
    <message>
        <source>What a page for a browser is made of was not built with this program; run scripts/build release page_parts, and try again.</source>
        <translation>Die Teile, aus denen eine Seite für den Browser gemacht wird, wurden mit diesem Programm nicht gebaut; scripts/build release page_parts ausführen und noch einmal versuchen.</translation>
    </message>
    <message>
        <source>No attempt leads to a pulse.</source>
        <translation>Kein Durchgang führt zu einem Impuls.</translation>
    </message>
    <message>
        <source>Pulse at the end, of %1: half within %2; a quarter within %3, three quarters within %4.</source>
        <translation>Der Impuls am Ende, bei %1: die Hälfte höchstens %2 daneben, ein Viertel höchstens %3, drei Viertel höchstens %4.</translation>
    </message>
    <message>
        <source>The class page does not fit on one page; choose larger paper.</source>
        <translation>Das Klassenblatt passt nicht auf eine Seite; größeres Papier wählen.</translation>
    </message>
    <message>
        <source>There is no result to be read; give one or more files of results.</source>
        <translation>Es gibt kein Ergebnis zu lesen; eine oder mehrere Ergebnisdateien angeben.</translation>
    </message>
    <message>
        <source>Left out: %1</source>
        <translation>Ausgelassen: %1</translation>
    </message>
    <message>
        <source>None of the files holds a result that can be read. %1</source>
        <translation>Keine der Dateien enthält ein lesbares Ergebnis. %1</translation>
    </message>
    <message>
        <source>Left out: %1 is of another exercise than most files; look at it with others of its own.</source>
        <translation>Ausgelassen: %1 gehört zu einer anderen Übung als die meisten Dateien; mit anderen der eigenen ansehen.</translation>
    </message>
    <message>
        <source>%1 cm²</source>
        <translation>%1 cm²</translation>
    </message>
    <message>
        <source>In a round model head its field is then strongest, %2 under the skin, %1 from where it is with the coil held flat, and all of it is left at that place.</source>
        <translation>In einem runden Modellkopf ist ihr Feld dann %2 unter der Haut am stärksten, %1 von der Stelle entfernt, an der es bei flach gehaltener Spule am stärksten ist, und an jener Stelle ist noch alles davon übrig.</translation>
    </message>
    <message>
        <source>In a round model head its field is then strongest, %3 under the skin, %1 from where it is with the coil held flat, and %2 % of it is left at that place.</source>
        <translation>In einem runden Modellkopf ist ihr Feld dann %3 unter der Haut am stärksten, %1 von der Stelle entfernt, an der es bei flach gehaltener Spule am stärksten ist, und an jener Stelle sind noch %2 % davon übrig.</translation>
    </message>
    <message>
        <source>go down the forehead with a fingertip and mark the deepest place of the hollow</source>
        <translation>mit der Fingerspitze die Stirn hinabgehen und die tiefste Stelle der Mulde markieren</translation>
    </message>
    <message>
        <source>stand straight in front and mark on the middle line of the nose</source>
        <translation>gerade davor stehen und auf der Mittellinie der Nase markieren</translation>
    </message>
    <message>
        <source>come up from the neck with a fingertip and mark the top of the bump</source>
        <translation>mit der Fingerspitze vom Nacken heraufkommen und die Kuppe des Höckers markieren</translation>
    </message>
    <message>
        <source>stand straight behind and mark between both sides of the bump</source>
        <translation>gerade dahinter stehen und mitten auf dem Höcker markieren</translation>
    </message>
    <message>
        <source>look at the ear from straight beside it and mark just in front of the ear canal</source>
        <translation>das Ohr gerade von der Seite ansehen und dicht vor dem Gehörgang markieren</translation>
    </message>
    <message>
        <source>put the tape&apos;s zero on the point, count from the next whole centimetre, and say the reading before you type it</source>
        <translation>die Null des Bandes auf den Punkt legen, vom nächsten ganzen Zentimeter an zählen und die Ablesung aussprechen, bevor sie eingegeben wird</translation>
    </message>
    <message>
        <source>pull the tape tight and lay it straight over the top: a tape that lies aside reads too long</source>
        <translation>das Band straff ziehen und gerade darüber legen: Ein Band, das daneben liegt, zeigt zu viel</translation>
    </message>
    <message>
        <source>check that the tape&apos;s end and its zero lie on the points themselves</source>
        <translation>prüfen, ob Ende und Null des Bandes auf den Punkten selbst liegen</translation>
    </message>
    <message>
        <source>measure half of nasion-inion from both ends, and mark between where they end</source>
        <translation>die Hälfte von Nasion-Inion von beiden Enden her messen und in der Mitte zwischen beiden markieren</translation>
    </message>
    <message>
        <source>measure half of tragus-tragus from both ears, and mark between where they end</source>
        <translation>die Hälfte von Tragus-Tragus von beiden Ohren her messen und in der Mitte zwischen beiden markieren</translation>
    </message>
    <message>
        <source>measure the way forward on its own, parallel to the midline</source>
        <translation>den Weg nach vorn für sich messen, parallel zur Mittellinie</translation>
    </message>
    <message>
        <source>put the tape&apos;s zero on the vertex and follow the tape down to the ear</source>
        <translation>die Null des Bandes auf den Vertex legen und dem Band zum Ohr hinab folgen</translation>
    </message>
    <message>
        <source>draw all spots from the middle one, along the midline and square to it, and measure each step</source>
        <translation>alle Rasterpunkte vom mittleren aus zeichnen, längs der Mittellinie und quer dazu, und jeden Schritt messen</translation>
    </message>
    <message>
        <source>measure the middle mark from the start with the tape on the skin, and look at its angle from above</source>
        <translation>die mittlere Marke mit dem Band auf der Haut vom Start aus messen und ihren Winkel von oben ansehen</translation>
    </message>
    <message>
        <source>put the tape&apos;s zero on the hotspot and read at the mark, twice</source>
        <translation>die Null des Bandes auf den Hotspot legen und an der Marke zweimal ablesen</translation>
    </message>
    <message>
        <source>keep the tape parallel to the midline: look along it from above</source>
        <translation>das Band parallel zur Mittellinie halten: von oben an ihm entlang blicken</translation>
    </message>
    <message>
        <source>lay the coil&apos;s edge over the mark that answered, at its angle, and mark under its centre</source>
        <translation>die Kante der Spule in ihrem Winkel über die Marke legen, die geantwortet hat, und unter ihrer Mitte markieren</translation>
    </message>
    <message>
        <source>set the coil&apos;s angle against the midline, looking from above, before you draw</source>
        <translation>vor dem Zeichnen den Winkel der Spule von oben gegen die Mittellinie einstellen</translation>
    </message>
    <message>
        <source>look straight down past the coil&apos;s edge: from aside it seems to lie elsewhere</source>
        <translation>senkrecht an der Kante der Spule vorbei nach unten blicken: Von der Seite scheint sie anderswo zu liegen</translation>
    </message>
    <message>
        <source>turn the coil until its centre line runs over the site mark, then look again</source>
        <translation>die Spule drehen, bis ihre Mittelachse über die Ortsmarke läuft, dann noch einmal hinsehen</translation>
    </message>
    <message>
        <source>close one eye and look straight down past the edge at its mark</source>
        <translation>ein Auge schließen und senkrecht an der Kante vorbei auf ihre Marke blicken</translation>
    </message>
    <message>
        <source>use all four distances, and mark where the arcs of the tape meet</source>
        <translation>alle vier Abstände nutzen und markieren, wo sich die Bögen des Bandes treffen</translation>
    </message>
    <message>
        <source>Nothing was put down, so nothing can be said of a habit.</source>
        <translation>Es wurde nichts gesetzt, über eine Gewohnheit lässt sich nichts sagen.</translation>
    </message>
    <message>
        <source>No step was off by more than %1 of its own: no habit to mend shows.</source>
        <translation>Kein Schritt lag für sich um mehr als %1 daneben: Es zeigt sich keine Gewohnheit, die zu bessern wäre.</translation>
    </message>
    <message>
        <source>Mend this first: %1 (%2). Next time, %3.</source>
        <translation>Dies zuerst bessern: %1 (%2). Beim nächsten Mal %3.</translation>
    </message>
    <message>
        <source>Measure %1 from the vertex along the tape toward %2. Mark the start.</source>
        <translation>Vom Vertex %1 längs des Bandes messen, Richtung: %2. Den Start markieren.</translation>
    </message>
    <message>
        <source>Measure %1 from the vertex along the tape toward %2, then %3 forward, parallel to the midline. Mark the start.</source>
        <translation>Vom Vertex %1 längs des Bandes messen, Richtung: %2, dann %3 nach vorn, parallel zur Mittellinie. Den Start markieren.</translation>
    </message>
    <message>
        <source>Measure %1 from the vertex along the tape toward %2, then %3 backward, parallel to the midline. Mark the start.</source>
        <translation>Vom Vertex %1 längs des Bandes messen, Richtung: %2, dann %3 nach hinten, parallel zur Mittellinie. Den Start markieren.</translation>
    </message>
    <message>
        <source>Draw the nine pulse points, %1 from one to the next, the start in the middle.</source>
        <translation>Die neun Impulspunkte zeichnen, %1 von einem zum nächsten, der Start in der Mitte.</translation>
    </message>
    <message>
        <source>Draw the nine edge marks: the middle one %1 along the skin from the start, at %2; the others around it, %3 from one to the next.</source>
        <translation>Die neun Kantenmarken zeichnen: die mittlere %1 längs der Haut vom Start, bei %2; die anderen darum herum, %3 von einer zur nächsten.</translation>
    </message>
    <message>
        <source>Draw the nine edge marks: the middle one by the %1 rule with the coil over the start, at %2; the others around it, %3 from one to the next.</source>
        <translation>Die neun Kantenmarken zeichnen: die mittlere nach der %1regel mit der Spule über dem Start, bei %2; die anderen darum herum, %3 von einer zur nächsten.</translation>
    </message>
    <message>
        <source>This spot answered: %1. Mark the hotspot: where its pulse went.</source>
        <translation>Dieser Rasterpunkt hat geantwortet: %1. Den Hotspot markieren: wohin sein Impuls ging.</translation>
    </message>
    <message>
        <source>This spot answered: %1. Mark the hotspot: where the pulse went of the coil laid over that edge mark, at %2.</source>
        <translation>Dieser Rasterpunkt hat geantwortet: %1. Den Hotspot markieren: wohin der Impuls der Spule ging, die bei %2 über dieser Kantenmarke lag.</translation>
    </message>
    <message>
        <source>Find the position %1 by tape, from the four points and the vertex. Mark the site.</source>
        <translation>Die Position %1 mit dem Band finden, von den vier Punkten und dem Vertex aus. Den Ort markieren.</translation>
    </message>
    <message>
        <source>Measure %1 forward from the hotspot, parallel to the midline. Mark the site.</source>
        <translation>Vom Hotspot %1 nach vorn messen, parallel zur Mittellinie. Den Ort markieren.</translation>
    </message>
    <message>
        <source>Draw the edge mark for the site: %1 along the skin, at %2.</source>
        <translation>Die Kantenmarke zum Ort zeichnen: %1 längs der Haut, bei %2.</translation>
    </message>
    <message>
        <source>Draw the edge mark for the site with the coil over it, at %1: look straight down past its front edge (drop rule).</source>
        <translation>Die Kantenmarke zum Ort zeichnen, die Spule darüber, bei %1: senkrecht an ihrer Vorderkante vorbei nach unten blicken (Lotregel).</translation>
    </message>
    <message>
        <source>Draw the edge mark for the site with the coil over it, at %1: on the skin nearest to its front edge.</source>
        <translation>Die Kantenmarke zum Ort zeichnen, die Spule darüber, bei %1: auf der Haut, die ihrer Vorderkante am nächsten ist.</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 nach oben</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 nach unten</translation>
    </message>
    <message>
        <source>%1 to the side of the coil</source>
        <translation>%1 zur Seite der Spule hin</translation>
    </message>
    <message>
        <source>%1 to the side without the coil</source>
        <translation>%1 zur Seite ohne Spule hin</translation>
    </message>
    <message>
        <source>%1 toward the nose</source>
        <translation>%1 zur Nase hin</translation>
    </message>
    <message>
        <source>%1 toward the back</source>
        <translation>%1 nach hinten zu</translation>
    </message>
    <message>
        <source>%1 degrees too far toward the midline</source>
        <translation>%1 Grad zu weit zur Mittellinie hin</translation>
    </message>
    <message>
        <source>%1 degrees too far away from the midline</source>
        <translation>%1 Grad zu weit von der Mittellinie weg</translation>
    </message>
    <message>
        <source>Four points</source>
        <translation>Vier Punkte</translation>
    </message>
    <message>
        <source>Three tapes</source>
        <translation>Drei Bänder</translation>
    </message>
    <message>
        <source>Vertex</source>
        <translation>Vertex</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Nine marks</source>
        <translation>Neun Marken</translation>
    </message>
    <message>
        <source>Hotspot</source>
        <translation>Hotspot</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Edge mark</source>
        <translation>Kantenmarke</translation>
    </message>
    <message>
        <source>Coil on your marks</source>
        <translation>Spule auf den eigenen Marken</translation>
    </message>
    <message>
        <source>Coil on given marks</source>
        <translation>Spule auf fremden Marken</translation>
    </message>
    <message>
        <source>Lost mark</source>
        <translation>Verlorene Marke</translation>
    </message>
    <message>
        <source>nasion-inion tape</source>
        <translation>Band Nasion-Inion</translation>
    </message>
    <message>
        <source>tragus-tragus tape</source>
        <translation>Band Tragus-Tragus</translation>
    </message>
    <message>
        <source>tape around the head</source>
        <translation>Band um den Kopf</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>hotspot</source>
        <translation>Hotspot</translation>
    </message>
    <message>
        <source>site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>edge mark</source>
        <translation>Kantenmarke</translation>
    </message>
    <message>
        <source>coil on one&apos;s own marks</source>
        <translation>Spule auf eigenen Marken</translation>
    </message>
    <message>
        <source>coil on given marks</source>
        <translation>Spule auf fremden Marken</translation>
    </message>
    <message>
        <source>lost mark</source>
        <translation>verlorene Marke</translation>
    </message>
    <message>
        <source>Feel for nasion, inion and both tragi, and mark each: the hollow over the nose, the bump at the back, the skin just in front of each ear canal.</source>
        <translation>Nasion, Inion und beide Tragi ertasten und markieren: die Mulde über der Nase, den Höcker hinten, die Haut dicht vor jedem Gehörgang.</translation>
    </message>
    <message>
        <source>Pull the tape from nasion over the top to inion, from tragus to tragus over the top, then around the head, a tenth of those tapes above each point. Type what you read.</source>
        <translation>Das Band vom Nasion über den Scheitel zum Inion ziehen, von Tragus zu Tragus über den Scheitel, dann um den Kopf, ein Zehntel dieser Bänder über jedem Punkt. Eingeben, was abgelesen wird.</translation>
    </message>
    <message>
        <source>Mark the vertex: half way along both long tapes at once.</source>
        <translation>Den Vertex markieren: auf halber Länge beider langen Bänder zugleich.</translation>
    </message>
    <message>
        <source>Lay the coil on your two marks: its front edge over the edge mark (%1 rule), its centre line over the site mark.</source>
        <translation>Die Spule auf die eigenen zwei Marken legen: ihre Vorderkante über die Kantenmarke (%1regel), ihre Mittelachse über die Ortsmarke.</translation>
    </message>
    <message>
        <source>Someone else has drawn these two marks. Lay the coil on them: its front edge over the edge mark (%1 rule), its centre line over the site mark.</source>
        <translation>Diese zwei Marken hat jemand anders gezeichnet. Die Spule darauf legen: ihre Vorderkante über die Kantenmarke (%1regel), ihre Mittelachse über die Ortsmarke.</translation>
    </message>
    <message>
        <source>The cap was changed, and a mark is lost with it. Its note says: %1. Find its place by tape and mark it.</source>
        <translation>Die Kappe wurde gewechselt, eine Marke ging mit ihr verloren. Ihr Zettel sagt: %1. Ihre Stelle mit dem Band finden und markieren.</translation>
    </message>
    <message>
        <source>%1 from the vertex, %2 from the nasion, %3 from the left tragus, %4 from the right tragus</source>
        <translation>%1 vom Vertex, %2 vom Nasion, %3 vom linken Tragus, %4 vom rechten Tragus</translation>
    </message>
    <message>
        <source>no error</source>
        <translation>kein Fehler</translation>
    </message>
    <message>
        <source>%1 too long</source>
        <translation>%1 zu lang</translation>
    </message>
    <message>
        <source>%1 too short</source>
        <translation>%1 zu kurz</translation>
    </message>
    <message>
        <source>The pulse goes %1 from where it should</source>
        <translation>Der Impuls geht um %1 daneben</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, the coil laid on these marks without error</source>
        <translation>%1, die Spule ohne Fehler auf diese Marken gelegt</translation>
    </message>
    <message>
        <source>%1; drawing and laying by two rules puts it another %2 off, which is no error of yours</source>
        <translation>%1; Zeichnen und Anlegen nach zwei Regeln verschiebt ihn um weitere %2, das ist kein eigener Fehler</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1: among the better half of trials by hand on this head (%2).</source>
        <translation>%1: unter der besseren Hälfte der Versuche von Hand an diesem Kopf (%2).</translation>
    </message>
    <message>
        <source>%1: within what 95 of 100 trials by hand reach on this head (%2).</source>
        <translation>%1: innerhalb dessen, was 95 von 100 Versuchen von Hand an diesem Kopf erreichen (%2).</translation>
    </message>
    <message>
        <source>%1: further off than 95 of 100 trials by hand on this head (%2).</source>
        <translation>%1: weiter daneben als 95 von 100 Versuchen von Hand an diesem Kopf (%2).</translation>
    </message>
    <message>
        <source>Do it again on the same head: two tries or more show whether a hand is steady.</source>
        <translation>Am selben Kopf noch einmal: Ab zwei Durchgängen zeigt sich, ob eine Hand ruhig ist.</translation>
    </message>
    <message>
        <source>Right and steady: no step is off by more than %1 on average, nor spreads by more.</source>
        <translation>Richtig und ruhig: Kein Schritt liegt im Mittel um mehr als %1 daneben oder streut um mehr.</translation>
    </message>
    <message>
        <source>Steady but not right, at this step most: %1. The same %2 off each time (spread %3) is one habit to mend.</source>
        <translation>Ruhig, aber nicht richtig, am meisten bei diesem Schritt: %1. Jedes Mal dieselben %2 daneben (Streuung %3): eine Gewohnheit, die sich bessern lässt.</translation>
    </message>
    <message>
        <source>Right on average but not steady, at this step most: %1. Tries spread by %2: take more time for it, in the same order each time.</source>
        <translation>Im Mittel richtig, aber nicht ruhig, am meisten bei diesem Schritt: %1. Die Durchgänge streuen um %2: sich mehr Zeit nehmen, jedes Mal in derselben Reihenfolge.</translation>
    </message>
    <message>
        <source>Neither right nor steady, at this step most: %1. Off by %2 on average, spread %3.</source>
        <translation>Weder richtig noch ruhig, am meisten bei diesem Schritt: %1. Im Mittel %2 daneben, Streuung %3.</translation>
    </message>
    <message>
        <source>A 10-20 position found by hand spreads by 9.0 mm (17 adults; Jurcak et al. 2005).</source>
        <translation>Eine von Hand gefundene 10-20-Position streut um 9,0 mm (17 Erwachsene; Jurcak et al. 2005).</translation>
    </message>
    <message>
        <source>A hotspot found again by pulses lies 8.1 mm away for the same examiner, 10.3 mm for another (10 adults; Sollmann et al. 2013).</source>
        <translation>Ein mit Impulsen wiedergefundener Hotspot liegt beim selben Untersucher 8,1 mm entfernt, bei einem anderen 10,3 mm (10 Erwachsene; Sollmann et al. 2013).</translation>
    </message>
    <message>
        <source>With cap and marks, without tracking: pulse 10.7 mm off on average, coil 6.0 degrees off (42 adults; Caulfield et al. 2022).</source>
        <translation>Mit Kappe und Marken, ohne Ortung: Impuls im Mittel 10,7 mm daneben, Spule 6,0 Grad (42 Erwachsene; Caulfield et al. 2022).</translation>
    </message>
    <message>
        <source>By hand on this head: half of the trials within %1, 95 of 100 within %2 (assumed errors of hands, marks on the skin).</source>
        <translation>Von Hand an diesem Kopf: die Hälfte der Versuche höchstens %1 daneben, 95 von 100 höchstens %2 (angenommene Fehler der Hand, Marken auf der Haut).</translation>
    </message>
    <message>
        <source>on a sphere %1 under its skin</source>
        <translation>auf einer Kugel %1 unter seiner Haut</translation>
    </message>
    <message>
        <source>A gap of %4 leaves %1 % of it, one of %5 %2 %: each %6 more asks for about %3 % more of the output in use (in people about 3 % of the device&apos;s full output were measured, Stokes et al. 2005).</source>
        <translation>Ein Spalt von %4 lässt %1 % davon übrig, einer von %5 %2 %: Jedes weitere Stück von %6 verlangt etwa %3 % mehr von der verwendeten Leistung (bei Menschen wurden etwa 3 % der vollen Geräteleistung gemessen, Stokes et al. 2005).</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>The language &quot;%1&quot; was not built with this program; build it, or leave --language out for English.</source>
        <translation>Die Sprache „%1“ wurde mit diesem Programm nicht gebaut; sie bauen, oder --language für Englisch weglassen.</translation>
    </message>
    <message>
        <source>Strips of paper in place of a tape that is read gain nothing here: measuring alone puts the pulse %1 mm off on average with them, %2 mm with a tape.</source>
        <translation>Papierstreifen statt eines abgelesenen Bandmaßes bringen hier nichts: das Messen allein verschiebt den Impuls damit im Mittel um %1 mm, mit dem Bandmaß um %2 mm.</translation>
    </message>
    <message>
        <source>Strips of paper in place of a tape that is read: measuring alone puts the pulse %1 mm off on average instead of %2 mm, and all causes together %3 mm instead of %4 mm.</source>
        <translation>Papierstreifen statt eines abgelesenen Bandmaßes: das Messen allein verschiebt den Impuls im Mittel um %1 mm statt %2 mm, alle Ursachen zusammen um %3 mm statt %4 mm.</translation>
    </message>
    <message>
        <source>middle mark</source>
        <translation>mittlere Marke</translation>
    </message>
    <message>
        <source>1 degree too far toward the midline</source>
        <translation>1 Grad zu weit zur Mittellinie hin</translation>
    </message>
    <message>
        <source>1 degree too far away from the midline</source>
        <translation>1 Grad zu weit von der Mittellinie weg</translation>
    </message>
    <message>
        <source>An exercise on a screen: no certificate, and no proof of how anybody works on a patient.</source>
        <translation>Eine Übung am Bildschirm: kein Zeugnis und kein Beleg dafür, wie jemand am Patienten arbeitet.</translation>
    </message>
    <message>
        <source>mark front, outward</source>
        <translation>Marke vorn, außen</translation>
    </message>
    <message>
        <source>mark front, inward</source>
        <translation>Marke vorn, innen</translation>
    </message>
    <message>
        <source>mark front</source>
        <translation>Marke vorn</translation>
    </message>
    <message>
        <source>mark back, outward</source>
        <translation>Marke hinten, außen</translation>
    </message>
    <message>
        <source>mark back, inward</source>
        <translation>Marke hinten, innen</translation>
    </message>
    <message>
        <source>mark back</source>
        <translation>Marke hinten</translation>
    </message>
    <message>
        <source>mark outward</source>
        <translation>Marke außen</translation>
    </message>
    <message>
        <source>mark inward</source>
        <translation>Marke innen</translation>
    </message>
    <message>
        <source>A tape is read to %1 (common practice, no source).</source>
        <translation>Ein Band wird auf %1 abgelesen (übliche Praxis, ohne Quelle).</translation>
    </message>
    <message>
        <source>The display has no OpenGL 3.2, which the stage is drawn with; install the Debian package libgl1-mesa-dri.</source>
        <translation>Die Anzeige hat kein OpenGL 3.2, mit dem die Bühne gezeichnet wird; das Debian-Paket libgl1-mesa-dri installieren.</translation>
    </message>
    <message>
        <source>%1 is empty, which is no %2; choose another file.</source>
        <translation>%1 ist leer und als %2 nicht lesbar; eine andere Datei wählen.</translation>
    </message>
</context>
<context>
    <name>PageQuestion</name>
    <message>
        <source>Page for a browser</source>
        <translation>Seite für den Browser</translation>
    </message>
    <message>
        <source>Whom is it for?</source>
        <translation>Für wen ist sie?</translation>
    </message>
    <message>
        <source>A patient: Explain&apos;s words, no numbers</source>
        <translation>Für Patienten: die Worte von Erklären, keine Zahlen</translation>
    </message>
    <message>
        <source>A technician: the numbers, the coil to move, Check</source>
        <translation>Für Fachkräfte: die Zahlen, die Spule zum Verschieben, Prüfen</translation>
    </message>
    <message>
        <source>A class: the steps of the lesson</source>
        <translation>Für den Unterricht: die Schritte der Lektion</translation>
    </message>
    <message>
        <source>This head is a scan and shows a person&apos;s face. Which head is the page to have?</source>
        <translation>Dieser Kopf ist ein Scan und zeigt das Gesicht eines Menschen. Welchen Kopf soll die Seite haben?</translation>
    </message>
    <message>
        <source>A drawn head, scaled to the same tapes</source>
        <translation>Einen gezeichneten Kopf, denselben Maßen angepasst</translation>
    </message>
    <message>
        <source>The scalp above brow and ears only (the coil cannot be moved there)</source>
        <translation>Nur die Kopfhaut über Brauen und Ohren (die Spule lässt sich darauf nicht verschieben)</translation>
    </message>
    <message>
        <source>The scan, with the person&apos;s face</source>
        <translation>Den Scan, mit dem Gesicht</translation>
    </message>
    <message>
        <source>Save the page…</source>
        <translation>Seite speichern…</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>Regions</name>
    <message>
        <source>precentral gyrus</source>
        <translation>Gyrus praecentralis</translation>
    </message>
    <message>
        <source>superior frontal gyrus</source>
        <translation>Gyrus frontalis superior</translation>
    </message>
    <message>
        <source>superior frontal gyrus, orbital part</source>
        <translation>Gyrus frontalis superior, Pars orbitalis</translation>
    </message>
    <message>
        <source>middle frontal gyrus</source>
        <translation>Gyrus frontalis medius</translation>
    </message>
    <message>
        <source>middle frontal gyrus, orbital part</source>
        <translation>Gyrus frontalis medius, Pars orbitalis</translation>
    </message>
    <message>
        <source>inferior frontal gyrus, opercular part</source>
        <translation>Gyrus frontalis inferior, Pars opercularis</translation>
    </message>
    <message>
        <source>inferior frontal gyrus, triangular part</source>
        <translation>Gyrus frontalis inferior, Pars triangularis</translation>
    </message>
    <message>
        <source>inferior frontal gyrus, orbital part</source>
        <translation>Gyrus frontalis inferior, Pars orbitalis</translation>
    </message>
    <message>
        <source>Rolandic operculum</source>
        <translation>Operculum rolandicum</translation>
    </message>
    <message>
        <source>supplementary motor area</source>
        <translation>supplementär-motorisches Areal</translation>
    </message>
    <message>
        <source>olfactory cortex</source>
        <translation>olfaktorischer Kortex</translation>
    </message>
    <message>
        <source>superior frontal gyrus, medial part</source>
        <translation>Gyrus frontalis superior, Pars medialis</translation>
    </message>
    <message>
        <source>superior frontal gyrus, medial orbital part</source>
        <translation>Gyrus frontalis superior, Pars orbitalis medialis</translation>
    </message>
    <message>
        <source>gyrus rectus</source>
        <translation>Gyrus rectus</translation>
    </message>
    <message>
        <source>insula</source>
        <translation>Insula</translation>
    </message>
    <message>
        <source>anterior cingulate gyrus</source>
        <translation>Gyrus cinguli anterior</translation>
    </message>
    <message>
        <source>middle cingulate gyrus</source>
        <translation>Gyrus cinguli medius</translation>
    </message>
    <message>
        <source>posterior cingulate gyrus</source>
        <translation>Gyrus cinguli posterior</translation>
    </message>
    <message>
        <source>hippocampus</source>
        <translation>Hippocampus</translation>
    </message>
    <message>
        <source>parahippocampal gyrus</source>
        <translation>Gyrus parahippocampalis</translation>
    </message>
    <message>
        <source>amygdala</source>
        <translation>Amygdala</translation>
    </message>
    <message>
        <source>calcarine cortex</source>
        <translation>Kortex am Sulcus calcarinus</translation>
    </message>
    <message>
        <source>cuneus</source>
        <translation>Cuneus</translation>
    </message>
    <message>
        <source>lingual gyrus</source>
        <translation>Gyrus lingualis</translation>
    </message>
    <message>
        <source>superior occipital gyrus</source>
        <translation>Gyrus occipitalis superior</translation>
    </message>
    <message>
        <source>middle occipital gyrus</source>
        <translation>Gyrus occipitalis medius</translation>
    </message>
    <message>
        <source>inferior occipital gyrus</source>
        <translation>Gyrus occipitalis inferior</translation>
    </message>
    <message>
        <source>fusiform gyrus</source>
        <translation>Gyrus fusiformis</translation>
    </message>
    <message>
        <source>postcentral gyrus</source>
        <translation>Gyrus postcentralis</translation>
    </message>
    <message>
        <source>superior parietal gyrus</source>
        <translation>Gyrus parietalis superior</translation>
    </message>
    <message>
        <source>inferior parietal gyrus</source>
        <translation>Gyrus parietalis inferior</translation>
    </message>
    <message>
        <source>supramarginal gyrus</source>
        <translation>Gyrus supramarginalis</translation>
    </message>
    <message>
        <source>angular gyrus</source>
        <translation>Gyrus angularis</translation>
    </message>
    <message>
        <source>precuneus</source>
        <translation>Praecuneus</translation>
    </message>
    <message>
        <source>paracentral lobule</source>
        <translation>Lobulus paracentralis</translation>
    </message>
    <message>
        <source>caudate nucleus</source>
        <translation>Nucleus caudatus</translation>
    </message>
    <message>
        <source>putamen</source>
        <translation>Putamen</translation>
    </message>
    <message>
        <source>pallidum</source>
        <translation>Pallidum</translation>
    </message>
    <message>
        <source>thalamus</source>
        <translation>Thalamus</translation>
    </message>
    <message>
        <source>transverse temporal gyrus</source>
        <translation>Gyrus temporalis transversus</translation>
    </message>
    <message>
        <source>superior temporal gyrus</source>
        <translation>Gyrus temporalis superior</translation>
    </message>
    <message>
        <source>temporal pole, superior part</source>
        <translation>Temporalpol, oberer Teil</translation>
    </message>
    <message>
        <source>middle temporal gyrus</source>
        <translation>Gyrus temporalis medius</translation>
    </message>
    <message>
        <source>temporal pole, middle part</source>
        <translation>Temporalpol, mittlerer Teil</translation>
    </message>
    <message>
        <source>inferior temporal gyrus</source>
        <translation>Gyrus temporalis inferior</translation>
    </message>
    <message>
        <source>cerebellum</source>
        <translation>Kleinhirn</translation>
    </message>
    <message>
        <source>vermis of the cerebellum</source>
        <translation>Kleinhirnwurm</translation>
    </message>
</context>
<context>
    <name>StatusLine</name>
    <message>
        <source>tape rule</source>
        <translation>Bandregel</translation>
    </message>
    <message>
        <source>drop rule</source>
        <translation>Lotregel</translation>
    </message>
    <message>
        <source>nearest rule</source>
        <translation>Nahpunktregel</translation>
    </message>
    <message>
        <source>edge mark: %1, falls off the head</source>
        <translation>Kantenmarke: %1, nicht auf dem Kopf</translation>
    </message>
    <message>
        <source>edge mark: %1, edge %2 above it</source>
        <translation>Kantenmarke: %1, Kante %2 darüber</translation>
    </message>
    <message>
        <source>pulse %1 from the site</source>
        <translation>Impuls %1 vom Ort</translation>
    </message>
    <message>
        <source>coil %1</source>
        <comment>where it lies</comment>
        <translation>Spule %1</translation>
    </message>
    <message>
        <source>%1  |  coil %2  |  %3</source>
        <translation>%1  |  Spule %2  |  %3</translation>
    </message>
</context>
<context>
    <name>TapeNames</name>
    <message>
        <source>Nasion to inion</source>
        <translation>Nasion bis Inion</translation>
    </message>
    <message>
        <source>Tragus to tragus</source>
        <translation>Tragus bis Tragus</translation>
    </message>
    <message>
        <source>Around the head</source>
        <translation>Um den Kopf</translation>
    </message>
</context>
<context>
    <name>VerdictWords</name>
    <message>
        <source>No check yet</source>
        <translation>Ungeprüft</translation>
    </message>
    <message>
        <source>Click today&apos;s site mark and edge mark, or enter tape distances to them.</source>
        <translation>Heutige Ortsmarke und Kantenmarke anklicken oder Bandabstände zu ihnen eingeben.</translation>
    </message>
    <message>
        <source>The marks agree with the plan</source>
        <translation>Die Marken stimmen mit dem Plan überein</translation>
    </message>
    <message>
        <source>Move the coil</source>
        <translation>Spule verschieben</translation>
    </message>
    <message>
        <source>Turn the coil</source>
        <translation>Spule drehen</translation>
    </message>
    <message>
        <source>Move and turn the coil</source>
        <translation>Spule verschieben und drehen</translation>
    </message>
    <message>
        <source>Pulse %1 from the site</source>
        <translation>Impuls %1 vom Ort</translation>
    </message>
    <message>
        <source>Coil %1, as wanted</source>
        <translation>Spule %1, wie gewollt</translation>
    </message>
    <message>
        <source>Coil %1, %2° off</source>
        <translation>Spule %1, %2° daneben</translation>
    </message>
    <message>
        <source>Not sure</source>
        <translation>Unsicher</translation>
    </message>
</context>
<context>
    <name>WhatIf</name>
    <message>
        <source>from the vertex toward the ear</source>
        <translation>vom Vertex zum Ohr</translation>
    </message>
    <message>
        <source>forward to the search start</source>
        <translation>nach vorn zum Suchstart</translation>
    </message>
    <message>
        <source>forward from the hotspot</source>
        <translation>vom Hotspot nach vorn</translation>
    </message>
    <message>
        <source>from the site to the edge mark</source>
        <translation>vom Ort zur Kantenmarke</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>to the patient&apos;s left</source>
        <translation>zur linken Patientenseite hin</translation>
    </message>
    <message>
        <source>to the patient&apos;s right</source>
        <translation>zur rechten Patientenseite hin</translation>
    </message>
    <message>
        <source>With the vertex marked %1 too far %2</source>
        <translation>Ist der Vertex %1 zu weit %2 markiert</translation>
    </message>
    <message>
        <source>With the tape %1 read %2 too short</source>
        <translation>Wird das Band %1 um %2 zu kurz abgelesen</translation>
    </message>
    <message>
        <source>With the tape %1 read %2 too long</source>
        <translation>Wird das Band %1 um %2 zu lang abgelesen</translation>
    </message>
    <message>
        <source>With the coil turned %1° away from the midline and its edge on the mark</source>
        <translation>Ist die Spule um %1° von der Mittellinie weg gedreht und liegt ihre Kante auf der Marke</translation>
    </message>
    <message>
        <source>With the coil turned %1° toward the midline and its edge on the mark</source>
        <translation>Ist die Spule um %1° zur Mittellinie hin gedreht und liegt ihre Kante auf der Marke</translation>
    </message>
    <message>
        <source>What if the vertex is off?</source>
        <translation>Vertex falsch markiert?</translation>
    </message>
    <message>
        <source>What if a tape is misread?</source>
        <translation>Band falsch abgelesen?</translation>
    </message>
    <message>
        <source>What if the coil is turned?</source>
        <translation>Spule verdreht?</translation>
    </message>
    <message>
        <source>What if the rules are mixed?</source>
        <translation>Regeln gemischt?</translation>
    </message>
    <message>
        <source>With the mark made by the %1 rule and the coil laid on it by the %2 rule</source>
        <translation>Wird die Marke nach der %1regel gezeichnet und die Spule nach der %2regel darauf angelegt</translation>
    </message>
    <message>
        <source>the search starts %1 off</source>
        <translation>beginnt die Suche %1 daneben</translation>
    </message>
    <message>
        <source>the pulse goes %1 off the treatment site</source>
        <translation>geht der Impuls um %1 am Behandlungsort vorbei</translation>
    </message>
    <message>
        <source>%1, %2, and %3.</source>
        <translation>%1, %2, und %3.</translation>
    </message>
    <message>
        <source>With the cap turned, its arrow %1° to the patient&apos;s left</source>
        <translation>Ist die Kappe um %1° gedreht, ihr Pfeil zur linken Patientenseite hin</translation>
    </message>
    <message>
        <source>With the cap turned, its arrow %1° to the patient&apos;s right</source>
        <translation>Ist die Kappe um %1° gedreht, ihr Pfeil zur rechten Patientenseite hin</translation>
    </message>
    <message>
        <source>With the cap slid %1 %2</source>
        <translation>Sitzt die Kappe %1 zu weit %2</translation>
    </message>
    <message>
        <source>from the coil&apos;s right</source>
        <translation>von der rechten Seite der Spule</translation>
    </message>
    <message>
        <source>from the coil&apos;s left</source>
        <translation>von der linken Seite der Spule</translation>
    </message>
    <message>
        <source>from the handle&apos;s side</source>
        <translation>von der Seite des Griffs</translation>
    </message>
    <message>
        <source>from the coil&apos;s front</source>
        <translation>von der Spulenfront her</translation>
    </message>
    <message>
        <source>With the edge looked at %1, %2° off the coil&apos;s axis</source>
        <translation>Blickt man %1 auf die Kante, %2° neben der Achse der Spule</translation>
    </message>
    <message>
        <source>What if the cap has slipped?</source>
        <translation>Kappe verrutscht?</translation>
    </message>
    <message>
        <source>What if one looks from aside?</source>
        <translation>Schräg geblickt?</translation>
    </message>
    <message>
        <source>With the coil turned %1° away from the midline about its centre</source>
        <translation>Ist die Spule um %1° von der Mittellinie weg um ihre Mitte gedreht</translation>
    </message>
    <message>
        <source>With the coil turned %1° toward the midline about its centre</source>
        <translation>Ist die Spule um %1° zur Mittellinie hin um ihre Mitte gedreht</translation>
    </message>
    <message>
        <source>With %1 more of hair or air under the coil</source>
        <translation>Liegen %1 mehr Haar oder Luft unter der Spule</translation>
    </message>
    <message>
        <source>With the coil&apos;s left wing lifted by %1°</source>
        <translation>Ist der linke Flügel der Spule um %1° angehoben</translation>
    </message>
    <message>
        <source>With the coil&apos;s right wing lifted by %1°</source>
        <translation>Ist der rechte Flügel der Spule um %1° angehoben</translation>
    </message>
    <message>
        <source>the coil lies at %1, as wanted</source>
        <translation>die Spule liegt %1, wie gewollt</translation>
    </message>
    <message>
        <source>the coil lies at %1 instead of %2</source>
        <translation>die Spule liegt %1 statt %2</translation>
    </message>
    <message>
        <source>In a round model head %1 % of the field is left at the wanted place, in its own direction.</source>
        <translation>In einem runden Modellkopf sind an der gewollten Stelle %1 % des Feldes übrig, in seiner eigenen Richtung.</translation>
    </message>
    <message>
        <source>What if the coil is not on the skin?</source>
        <translation>Spule nicht auf der Haut?</translation>
    </message>
    <message>
        <source>%1, and also %2</source>
        <comment>two mistakes</comment>
        <translation>%1, und außerdem %2</translation>
    </message>
    <message>
        <source>In a round model head all of the field is left at the wanted place.</source>
        <translation>In einem runden Modellkopf ist an der gewollten Stelle das ganze Feld übrig.</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>alles davon</translation>
    </message>
    <message>
        <source>most of it (%1 is left)</source>
        <translation>das meiste davon (%1 bleiben)</translation>
    </message>
    <message>
        <source>some of it (%1 is left)</source>
        <translation>einen Teil davon (%1 bleiben)</translation>
    </message>
    <message>
        <source>none of it</source>
        <translation>nichts davon</translation>
    </message>
    <message>
        <source>none of it (it becomes %1)</source>
        <translation>nichts davon (es werden %1)</translation>
    </message>
    <message>
        <source>%1 back</source>
        <translation>%1 nach hinten</translation>
    </message>
    <message>
        <source>%1 forward</source>
        <translation>%1 nach vorn</translation>
    </message>
    <message>
        <source>%1 toward the midline</source>
        <translation>%1 zur Mittellinie hin</translation>
    </message>
    <message>
        <source>%1 away from the midline</source>
        <translation>%1 von der Mittellinie weg</translation>
    </message>
    <message>
        <source>The search by twitch takes back none of it: the same spot is still the nearest, and the site is off by %1.</source>
        <translation>Die Suche nach dem Zucken nimmt davon nichts zurück: Derselbe Rasterpunkt ist noch immer der nächste, und der Ort liegt %1 daneben.</translation>
    </message>
    <message>
        <source>Without a search by twitch the site would be off by %1; another spot then answers, and takes back %2.</source>
        <translation>Ohne Suche nach dem Zucken läge der Ort %1 daneben; dann antwortet ein anderer Rasterpunkt und nimmt %2 zurück.</translation>
    </message>
    <message>
        <source>Without a search by twitch the site would be off by %1 and %2; another spot then answers, and takes back of the first %3, of the second %4.</source>
        <translation>Ohne Suche nach dem Zucken läge der Ort %1 und %2 daneben; dann antwortet ein anderer Rasterpunkt und nimmt vom Ersten %3 zurück, vom Zweiten %4.</translation>
    </message>
    <message>
        <source>The site is then off by %1.</source>
        <translation>Der Ort liegt dann %1 daneben.</translation>
    </message>
    <message>
        <source>Alone, the first would put it %1 off, the second %2.</source>
        <translation>Allein würde der erste Fehler %1 ausmachen, der zweite %2.</translation>
    </message>
    <message>
        <source>What if two things go wrong?</source>
        <translation>Zweierlei falsch?</translation>
    </message>
    <message>
        <source>Kept: %1. The next one you choose comes on top.</source>
        <translation>Behalten: %1. Was als Nächstes gewählt wird, kommt hinzu.</translation>
    </message>
</context>
<context>
    <name>WhatIfPicture</name>
    <message>
        <source>wanted edge mark</source>
        <translation>gewollte Kantenmarke</translation>
    </message>
    <message>
        <source>wanted search start</source>
        <translation>gewollter Suchstart</translation>
    </message>
    <message>
        <source>wanted pulse point</source>
        <translation>gewollter Impulspunkt</translation>
    </message>
    <message>
        <source>vertex as marked</source>
        <translation>Vertex, wie markiert</translation>
    </message>
    <message>
        <source>edge mark, in its place</source>
        <translation>Kantenmarke, an ihrer Stelle</translation>
    </message>
    <message>
        <source>real edge mark</source>
        <translation>wirkliche Kantenmarke</translation>
    </message>
    <message>
        <source>pulse point, as wanted</source>
        <translation>Impulspunkt, wie gewollt</translation>
    </message>
    <message>
        <source>real pulse point</source>
        <translation>wirklicher Impulspunkt</translation>
    </message>
    <message>
        <source>the first alone, %1</source>
        <translation>der erste allein, %1</translation>
    </message>
    <message>
        <source>the second alone, %1</source>
        <translation>der zweite allein, %1</translation>
    </message>
    <message>
        <source>real pulse point, both</source>
        <translation>wirklicher Impulspunkt, beide</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>Measure the head</source>
        <translation>Kopf vermessen</translation>
    </message>
    <message>
        <source>Run a tape over the top from nasion to inion: %1. Run another from the front of one ear canal over the top to the other: %2.</source>
        <translation>Ein Maßband vom Nasion über den Scheitel zum Inion legen: %1. Ein zweites von Tragus zu Tragus über den Scheitel, jeweils vor dem Gehörgang: %2.</translation>
    </message>
    <message>
        <source>Halve the first tape</source>
        <translation>Erstes Band halbieren</translation>
    </message>
    <message>
        <source>Half of %1 is %2. Make a short line across the midline there.</source>
        <translation>Die Hälfte von %1 ist %2. Dort einen kurzen Strich quer zur Mittellinie ziehen.</translation>
    </message>
    <message>
        <source>Cross at the vertex</source>
        <translation>Kreuz am Vertex</translation>
    </message>
    <message>
        <source>Half of %1 is %2. Where both halves cross is the vertex. If the two tapes do not agree, move the mark and measure again until they do.</source>
        <translation>Die Hälfte von %1 ist %2. Wo sich beide Hälften kreuzen, liegt der Vertex. Stimmen die beiden Bänder nicht überein, die Marke verschieben und neu messen, bis sie es tun.</translation>
    </message>
    <message>
        <source>Go toward the ear</source>
        <translation>Zum Ohr hin gehen</translation>
    </message>
    <message>
        <source>From the vertex go %1 along the tape toward the left ear.</source>
        <translation>Vom Vertex %1 am Band entlang zum linken Ohr gehen.</translation>
    </message>
    <message>
        <source>From the vertex go %1 along the tape toward the right ear.</source>
        <translation>Vom Vertex %1 am Band entlang zum rechten Ohr gehen.</translation>
    </message>
    <message>
        <source>Go forward, lay the coil</source>
        <translation>Nach vorn, Spule anlegen</translation>
    </message>
    <message>
        <source>Then go %1 backward, along the midline&apos;s direction. The search starts here. Lay the coil flat on it, its front edge turned %2 toward the midline.</source>
        <translation>Dann %1 nach hinten gehen, in Richtung der Mittellinie. Hier beginnt die Suche. Die Spule flach darauf anlegen, die Vorderkante um %2 zur Mittellinie gedreht.</translation>
    </message>
    <message>
        <source>Then go %1 forward, along the midline&apos;s direction. The search starts here. Lay the coil flat on it, its front edge turned %2 toward the midline.</source>
        <translation>Dann %1 nach vorn gehen, in Richtung der Mittellinie. Hier beginnt die Suche. Die Spule flach darauf anlegen, die Vorderkante um %2 zur Mittellinie gedreht.</translation>
    </message>
    <message>
        <source>Draw the search grid</source>
        <translation>Suchraster zeichnen</translation>
    </message>
    <message>
        <source>Mark the coil&apos;s edge, and around it eight more points, %1 apart: nine places to try, one after the other.</source>
        <translation>Die Kante der Spule markieren und darum herum acht weitere Punkte im Abstand von %1: neun Stellen, die nacheinander probiert werden.</translation>
    </message>
    <message>
        <source>Mark the pulse point, and around it eight more points, %1 apart: nine places to try, one after the other.</source>
        <translation>Den Impulspunkt markieren und darum herum acht weitere Punkte im Abstand von %1: neun Stellen, die nacheinander probiert werden.</translation>
    </message>
    <message>
        <source>Find the hotspot</source>
        <translation>Hotspot finden</translation>
    </message>
    <message>
        <source>Go forward to the site</source>
        <translation>Vor zum Behandlungsort</translation>
    </message>
    <message>
        <source>From the hotspot go %1 forward, side by side with the midline. This is the treatment site.</source>
        <translation>Vom Hotspot %1 nach vorn gehen, parallel zur Mittellinie. Das ist der Behandlungsort.</translation>
    </message>
    <message>
        <source>Find the site</source>
        <translation>Behandlungsort finden</translation>
    </message>
    <message>
        <source>The treatment site is the landmark %1, measured out with tapes.</source>
        <translation>Der Behandlungsort ist die Landmarke %1, mit Maßbändern ausgemessen.</translation>
    </message>
    <message>
        <source>Mark the coil&apos;s edge</source>
        <translation>Spulenkante markieren</translation>
    </message>
    <message>
        <source>From the site run a tape %1 along the skin, in the direction of the coil&apos;s front, and mark.</source>
        <translation>Vom Behandlungsort ein Band %1 weit auf der Haut in Richtung der Spulenfront führen und markieren.</translation>
    </message>
    <message>
        <source>The edge is %1 from the coil&apos;s centre. Look straight down past it and mark the skin.</source>
        <translation>Die Kante ist %1 von der Mitte der Spule entfernt. Senkrecht an ihr vorbei nach unten blicken und die Haut markieren.</translation>
    </message>
    <message>
        <source>The edge is %1 from the coil&apos;s centre. Mark the skin nearest to it.</source>
        <translation>Die Kante ist %1 von der Mitte der Spule entfernt. Die ihr nächste Stelle der Haut markieren.</translation>
    </message>
    <message>
        <source>at its centre</source>
        <translation>in der Mitte</translation>
    </message>
    <message>
        <source>%1 right of its centre</source>
        <translation>%1 rechts der Mitte</translation>
    </message>
    <message>
        <source>%1 left of its centre</source>
        <translation>%1 links der Mitte</translation>
    </message>
    <message>
        <source>%1 toward its front</source>
        <translation>%1 zur Vorderkante hin</translation>
    </message>
    <message>
        <source>%1 toward its handle</source>
        <translation>%1 zum Griff hin</translation>
    </message>
    <message>
        <source>touches here</source>
        <translation>berührt hier</translation>
    </message>
    <message>
        <source>touches the left ear</source>
        <translation>berührt das linke Ohr</translation>
    </message>
    <message>
        <source>touches the right ear</source>
        <translation>berührt das rechte Ohr</translation>
    </message>
    <message>
        <source>touches the brow or face</source>
        <translation>berührt Stirn oder Gesicht</translation>
    </message>
    <message>
        <source>hits the scalp</source>
        <translation>stößt an die Kopfhaut</translation>
    </message>
    <message>
        <source>hits the left ear</source>
        <translation>stößt an das linke Ohr</translation>
    </message>
    <message>
        <source>hits the right ear</source>
        <translation>stößt an das rechte Ohr</translation>
    </message>
    <message>
        <source>hits the brow or face</source>
        <translation>stößt an Stirn oder Gesicht</translation>
    </message>
    <message>
        <source>%1: a drawing, not the patient</source>
        <translation>%1: eine Zeichnung, nicht der Patient</translation>
    </message>
    <message>
        <source>run a tape %1 along the skin from the pulse point</source>
        <translation>ein Band vom Impulspunkt %1 weit auf der Haut führen</translation>
    </message>
    <message>
        <source>look straight down past the coil&apos;s edge</source>
        <translation>senkrecht an der Kante der Spule vorbei nach unten blicken</translation>
    </message>
    <message>
        <source>mark the skin nearest to the edge</source>
        <translation>die der Kante nächste Stelle der Haut markieren</translation>
    </message>
    <message>
        <source>%1 forward</source>
        <translation>%1 nach vorn</translation>
    </message>
    <message>
        <source>%1 forward of the hotspot</source>
        <translation>%1 vor dem Hotspot</translation>
    </message>
    <message>
        <source>half way between %1 and %2</source>
        <translation>Mitte zwischen %1 und %2</translation>
    </message>
    <message>
        <source>Measures</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>tape</source>
        <comment>what the tape measure gave</comment>
        <translation>Band</translation>
    </message>
    <message>
        <source>this head</source>
        <translation>dieser Kopf</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <source>Nasion to inion</source>
        <translation>Nasion bis Inion</translation>
    </message>
    <message>
        <source>Tragus to tragus</source>
        <translation>Tragus bis Tragus</translation>
    </message>
    <message>
        <source>Around the head</source>
        <translation>Um den Kopf</translation>
    </message>
    <message>
        <source>Find them again with a tape</source>
        <translation>Mit dem Maßband wiederfinden</translation>
    </message>
    <message>
        <source>vertex</source>
        <translation>Vertex</translation>
    </message>
    <message>
        <source>nasion</source>
        <translation>Nasion</translation>
    </message>
    <message>
        <source>left tragus</source>
        <translation>Tragus links</translation>
    </message>
    <message>
        <source>right tragus</source>
        <translation>Tragus rechts</translation>
    </message>
    <message>
        <source>off the head</source>
        <translation>nicht auf dem Kopf</translation>
    </message>
    <message>
        <source>Hotspot, pulse point</source>
        <translation>Hotspot, Impulspunkt</translation>
    </message>
    <message>
        <source>Hotspot, edge mark</source>
        <translation>Hotspot, Kantenmarke</translation>
    </message>
    <message>
        <source>Treatment site, pulse point</source>
        <translation>Behandlungsort, Impulspunkt</translation>
    </message>
    <message>
        <source>Treatment site, edge mark</source>
        <translation>Behandlungsort, Kantenmarke</translation>
    </message>
    <message>
        <source>Under the coil, on the template&apos;s brain</source>
        <translation>Unter der Spule, am Gehirn der Vorlage</translation>
    </message>
    <message>
        <source>All this on the template; a person&apos;s own brain differs.</source>
        <translation>All dies an der Vorlage; das eigene Gehirn eines Menschen weicht ab.</translation>
    </message>
    <message>
        <source>%1 from skin to cortex; %2; %3</source>
        <translation>%1 von der Haut zum Kortex; %2; %3</translation>
    </message>
    <message>
        <source>Treatment site</source>
        <translation>Behandlungsort</translation>
    </message>
    <message>
        <source>Hotspot</source>
        <translation>Hotspot</translation>
    </message>
    <message>
        <source>The three marking rules</source>
        <translation>Die drei Markierregeln</translation>
    </message>
    <message>
        <source>rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>what staff do</source>
        <translation>was zu tun ist</translation>
    </message>
    <message>
        <source>A mark drawn by one rule and laid over by another moves the pulse by about as much. Keep to the chosen rule at every visit.</source>
        <translation>Eine Marke, die nach einer Regel gezeichnet und nach einer anderen benutzt wird, verschiebt den Impuls um etwa ebenso viel. Bei jeder Sitzung bei der gewählten Regel bleiben.</translation>
    </message>
    <message>
        <source>none</source>
        <comment>no edge mark</comment>
        <translation>keine</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>Other treatment sites in use</source>
        <translation>Andere übliche Orte</translation>
    </message>
    <message>
        <source>site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>A licensed prescriber decides site, threshold and dose; the device&apos;s instructions and local codes come first.</source>
        <translation>Über Ort, Schwelle und Dosis entscheidet die approbierte verordnende Fachkraft; die Gebrauchsanweisung des Geräts und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Before any pulse, ask about metal or implants in or near the head, pacemakers and stimulators.</source>
        <translation>Vor jedem Impuls nach Metall oder Implantaten im Kopf oder in seiner Nähe, nach Herzschrittmachern und Stimulatoren fragen.</translation>
    </message>
    <message>
        <source>Ask about seizures, drugs that lower the seizure threshold, and pregnancy.</source>
        <translation>Nach Krampfanfällen, nach Medikamenten oder anderen Substanzen, die die Krampfschwelle senken, und nach Schwangerschaft fragen.</translation>
    </message>
    <message>
        <source>Ear protection for patient and staff.</source>
        <translation>Gehörschutz für Patient und Personal.</translation>
    </message>
    <message>
        <source>Know what to do in a seizure.</source>
        <translation>Wissen, was bei einem Krampfanfall zu tun ist.</translation>
    </message>
    <message>
        <source>Unnamed case</source>
        <translation>Unbenannter Fall</translation>
    </message>
    <message>
        <source>A drawing, not the patient: where they differ, the tape decides.</source>
        <translation>Eine Zeichnung, nicht der Patient: Wo sie voneinander abweichen, entscheidet das Maßband.</translation>
    </message>
    <message>
        <source>The distances hold for this head alone, and as far as its four points were placed well.</source>
        <translation>Die Abstände gelten nur für diesen Kopf, und nur so gut, wie seine vier Punkte gesetzt wurden.</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suche</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>Vertex toward ear</source>
        <translation>Vertex zum Ohr</translation>
    </message>
    <message>
        <source>Then backward</source>
        <translation>Dann nach hinten</translation>
    </message>
    <message>
        <source>Then forward</source>
        <translation>Dann nach vorn</translation>
    </message>
    <message>
        <source>Grid step</source>
        <translation>Rasterschritt</translation>
    </message>
    <message>
        <source>%1, on edge marks</source>
        <translation>%1, auf Kantenmarken</translation>
    </message>
    <message>
        <source>%1, on pulse points</source>
        <translation>%1, auf Impulspunkten</translation>
    </message>
    <message>
        <source>the mark falls off the head</source>
        <translation>die Marke liegt nicht auf dem Kopf</translation>
    </message>
    <message>
        <source>Coil</source>
        <translation>Spule</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Centre to front edge</source>
        <translation>Mitte bis Vorderkante</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Behandlung</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Gap at the hotspot</source>
        <translation>Spalt am Hotspot</translation>
    </message>
    <message>
        <source>January</source>
        <translation>Januar</translation>
    </message>
    <message>
        <source>February</source>
        <translation>Februar</translation>
    </message>
    <message>
        <source>March</source>
        <translation>März</translation>
    </message>
    <message>
        <source>April</source>
        <translation>April</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Mai</translation>
    </message>
    <message>
        <source>June</source>
        <translation>Juni</translation>
    </message>
    <message>
        <source>July</source>
        <translation>Juli</translation>
    </message>
    <message>
        <source>August</source>
        <translation>August</translation>
    </message>
    <message>
        <source>September</source>
        <translation>September</translation>
    </message>
    <message>
        <source>October</source>
        <translation>Oktober</translation>
    </message>
    <message>
        <source>November</source>
        <translation>November</translation>
    </message>
    <message>
        <source>December</source>
        <translation>Dezember</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <comment>a date: day, month, year</comment>
        <translation>%1. %2 %3</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Page %1</source>
        <translation>Seite %1</translation>
    </message>
    <message>
        <source>Landmark</source>
        <translation>Landmarke</translation>
    </message>
    <message>
        <source>Pulse point</source>
        <translation>Impulspunkt</translation>
    </message>
    <message>
        <source>Edge mark</source>
        <translation>Kantenmarke</translation>
    </message>
    <message>
        <source>In the pictures</source>
        <translation>In den Bildern</translation>
    </message>
    <message>
        <source>Placement sheet</source>
        <translation>Platzierungsblatt</translation>
    </message>
    <message>
        <source>Set up by</source>
        <translation>Erstellt</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>Prescriber</source>
        <translation>Verordnet</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Sitzungen</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Handzeichen</translation>
    </message>
    <message>
        <source>Marks found again with</source>
        <translation>Marken wiedergefunden mit</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Warnings of this plan</source>
        <translation>Warnungen zu diesem Plan</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>The patient&apos;s left side</source>
        <translation>Linke Patientenseite</translation>
    </message>
    <message>
        <source>The patient&apos;s right side</source>
        <translation>Rechte Patientenseite</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>Von oben</translation>
    </message>
    <message>
        <source>From the front and the patient&apos;s left</source>
        <translation>Von vorn und von links</translation>
    </message>
    <message>
        <source>From the front and the patient&apos;s right</source>
        <translation>Von vorn und von rechts</translation>
    </message>
    <message>
        <source>above</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>the front</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>the back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>the patient&apos;s right</source>
        <translation>der rechten Patientenseite</translation>
    </message>
    <message>
        <source>the patient&apos;s left</source>
        <translation>der linken Patientenseite</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>from %1 and %2</source>
        <translation>von %1 und %2</translation>
    </message>
    <message>
        <source>from %1, %2 and %3</source>
        <translation>von %1, %2 und %3</translation>
    </message>
    <message>
        <source>Training and illustration only; not a navigation or treatment device. Follow the device&apos;s instructions, local codes and the licensed clinician.</source>
        <translation>Nur zur Schulung und Veranschaulichung; kein Navigations- oder Behandlungsgerät. Der Gebrauchsanweisung des Geräts, örtlichen Vorschriften und der approbierten Fachkraft folgen.</translation>
    </message>
    <message>
        <source>Left side stimulated</source>
        <translation>Linke Seite stimuliert</translation>
    </message>
    <message>
        <source>Right side stimulated</source>
        <translation>Rechte Seite stimuliert</translation>
    </message>
    <message>
        <source>%1, seen %2.</source>
        <translation>%1, gesehen %2.</translation>
    </message>
    <message>
        <source>Patient&apos;s left</source>
        <translation>Patient links</translation>
    </message>
    <message>
        <source>Patient&apos;s right</source>
        <translation>Patient rechts</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <source>Patient&apos;s right side</source>
        <translation>Rechte Patientenseite</translation>
    </message>
    <message>
        <source>Patient&apos;s left side</source>
        <translation>Linke Patientenseite</translation>
    </message>
    <message>
        <source>no named region</source>
        <translation>keine benannte Region</translation>
    </message>
    <message>
        <source>Under the skin</source>
        <translation>Unter der Haut</translation>
    </message>
    <message>
        <source>The brain as on the template; a person&apos;s own brain differs.</source>
        <translation>Das Gehirn wie auf der Vorlage; das eigene Gehirn eines Menschen weicht ab.</translation>
    </message>
    <message>
        <source>Under the coil</source>
        <translation>Unter der Spule</translation>
    </message>
    <message>
        <source>%1 from skin to cortex</source>
        <translation>%1 von der Haut zum Kortex</translation>
    </message>
    <message>
        <source>centre %1</source>
        <translation>Mitte %1</translation>
    </message>
    <message>
        <source>%1 %2 to %3</source>
        <comment>a part of the coil and its gaps in mm</comment>
        <translation>%1 %2 bis %3</translation>
    </message>
    <message>
        <source>rests on its wings, centre clear</source>
        <translation>liegt auf den Flügeln auf, Mitte frei</translation>
    </message>
    <message>
        <source>inion</source>
        <translation>Inion</translation>
    </message>
    <message>
        <source>Cz (vertex)</source>
        <translation>Cz (Vertex)</translation>
    </message>
    <message>
        <source>Search start</source>
        <translation>Suchstart</translation>
    </message>
    <message>
        <source>Other sites in use</source>
        <translation>Andere übliche Orte</translation>
    </message>
    <message>
        <source>Edge mark, chosen rule</source>
        <translation>Kantenmarke, gewählte Regel</translation>
    </message>
    <message>
        <source>Edge mark, other rules</source>
        <translation>Kantenmarke, andere Regeln</translation>
    </message>
    <message>
        <source>Search grid: pulse points</source>
        <translation>Suchraster: Impulspunkte</translation>
    </message>
    <message>
        <source>Search grid: edge marks</source>
        <translation>Suchraster: Kantenmarken</translation>
    </message>
    <message>
        <source>Forward (midline direction)</source>
        <translation>Nach vorn (Mittellinienrichtung)</translation>
    </message>
    <message>
        <source>Front axis of the coil</source>
        <translation>Frontachse der Spule</translation>
    </message>
    <message>
        <source>Coil&apos;s outline</source>
        <translation>Umriss der Spule</translation>
    </message>
    <message>
        <source>Coil and windings</source>
        <translation>Spule und Wicklungen</translation>
    </message>
    <message>
        <source>Cortex under the coil (template)</source>
        <translation>Kortex unter der Spule (Vorlage)</translation>
    </message>
    <message>
        <source>Coil %1</source>
        <comment>where it lies</comment>
        <translation>Spule %1</translation>
    </message>
    <message>
        <source>pulse</source>
        <translation>Impuls</translation>
    </message>
    <message>
        <source>edge mark</source>
        <translation>Kantenmarke</translation>
    </message>
    <message>
        <source>%1: %2 from the site</source>
        <translation>%1: %2 vom Ort</translation>
    </message>
    <message>
        <source>on the start</source>
        <translation>am Suchstart</translation>
    </message>
    <message>
        <source>on the hotspot</source>
        <translation>am Hotspot</translation>
    </message>
    <message>
        <source>on the treatment site</source>
        <translation>am Behandlungsort</translation>
    </message>
    <message>
        <source>as laid</source>
        <translation>wie angelegt</translation>
    </message>
    <message>
        <source>half of them</source>
        <translation>die Hälfte davon</translation>
    </message>
    <message>
        <source>.</source>
        <comment>what stands before decimals: 5.0</comment>
        <translation>,</translation>
    </message>
    <message>
        <source>its centre where a tape from the mark ends</source>
        <translation>die Mitte dort, wo ein Band von der Marke endet</translation>
    </message>
    <message>
        <source>look straight down past its edge at the mark</source>
        <translation>senkrecht an der Kante vorbei auf die Marke blicken</translation>
    </message>
    <message>
        <source>its edge as near to the mark as it goes</source>
        <translation>die Kante so nah wie möglich an die Marke</translation>
    </message>
    <message>
        <source>Cap, its arrow down the nose: %1</source>
        <translation>Kappe, ihr Pfeil die Nase hinab: %1</translation>
    </message>
    <message>
        <source>found within</source>
        <translation>gefunden auf</translation>
    </message>
    <message>
        <source>%1 *</source>
        <comment>a length, with a footnote</comment>
        <translation>%1 *</translation>
    </message>
    <message>
        <source> * These tapes fit another place as well; measure all four.</source>
        <translation> * Diese Bänder passen auch zu einer anderen Stelle; alle vier messen.</translation>
    </message>
    <message>
        <source>All this on the template; a person&apos;s own brain differs. The first depth is to the nearest cortex, the second the middle of those over a patch of 1 cm around. Which muscle answers at the hotspot only the twitch can say.</source>
        <translation>All dies an der Vorlage; das eigene Gehirn eines Menschen weicht ab. Die erste Tiefe gilt dem nächsten Kortex, die zweite ist die mittlere auf einem Fleck von 1 cm ringsum. Welcher Muskel am Hotspot antwortet, zeigt nur das Zucken.</translation>
    </message>
    <message>
        <source>Tape for each search mark</source>
        <translation>Band für jede Suchmarke</translation>
    </message>
    <message>
        <source>toward the midline</source>
        <translation>zur Mittellinie</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>outward</source>
        <translation>nach außen</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>nach vorn</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>nach hinten</translation>
    </message>
    <message>
        <source>%1 (%2 off)</source>
        <comment>a tape to draw, and how far off without it</comment>
        <translation>%1 (%2 daneben)</translation>
    </message>
    <message>
        <source>Drawn at these lengths, the marks put the laid coil&apos;s pulse on the point measured. In brackets how far off it lands with marks drawn by the %1 rule at %2 and the coil laid by the %3 rule.</source>
        <translation>In diesen Längen gezeichnet, bringen die Marken den Impuls der angelegten Spule auf den gemessenen Punkt. In Klammern, wie weit er daneben liegt, wenn die Marken nach der %1regel bei %2 gezeichnet sind und die Spule nach der %3regel angelegt ist.</translation>
    </message>
    <message>
        <source>Edge marks drawn by</source>
        <translation>Kantenmarken gezeichnet nach</translation>
    </message>
    <message>
        <source>Laid over a mark by</source>
        <translation>An der Marke angelegt nach</translation>
    </message>
    <message>
        <source>Edge mark drawn by</source>
        <translation>Kantenmarke gezeichnet nach</translation>
    </message>
    <message>
        <source>By hand: %1 %2 %3</source>
        <translation>Von Hand: %1 %2 %3</translation>
    </message>
    <message>
        <source>Where the pulse was wanted</source>
        <translation>Wo der Impuls gewollt war</translation>
    </message>
    <message>
        <source>Cap: brim, and arrow down the nose</source>
        <translation>Kappe: Rand und Pfeil die Nase hinab</translation>
    </message>
    <message>
        <source>Places that fit today&apos;s tapes</source>
        <translation>Stellen nach den heutigen Bändern</translation>
    </message>
    <message>
        <source>eye</source>
        <translation>Auge</translation>
    </message>
    <message>
        <source>Line of sight past the edge</source>
        <translation>Blicklinie an der Kante vorbei</translation>
    </message>
    <message>
        <source>Search on the right side, treatment on the left</source>
        <translation>Suche rechts, Behandlung links</translation>
    </message>
    <message>
        <source>Search on the left side, treatment on the right</source>
        <translation>Suche links, Behandlung rechts</translation>
    </message>
    <message>
        <source>Wanted here, %1 from the pulse</source>
        <translation>Hier gewollt, %1 vom Impuls</translation>
    </message>
    <message>
        <source>Drawn by %1, laid by %2</source>
        <translation>Gezeichnet nach %1-, angelegt nach %2regel</translation>
    </message>
    <message>
        <source>Marks of the way chosen</source>
        <translation>Marken der gewählten Markierweise</translation>
    </message>
    <message>
        <source>mostly %1</source>
        <comment>a region of the brain</comment>
        <translation>überwiegend %1</translation>
    </message>
    <message>
        <source>%1 and others</source>
        <comment>a region of the brain</comment>
        <translation>%1 und andere</translation>
    </message>
    <message>
        <source>%1, some %2</source>
        <comment>two regions of the brain</comment>
        <translation>%1, teils %2</translation>
    </message>
    <message>
        <source>Brodmann area %1</source>
        <translation>Brodmann-Areal %1</translation>
    </message>
    <message>
        <source>left %1</source>
        <comment>a gyrus</comment>
        <translation>%1 links</translation>
    </message>
    <message>
        <source>right %1</source>
        <comment>a gyrus</comment>
        <translation>%1 rechts</translation>
    </message>
    <message>
        <source>Laid with a tape over this mark, the pulse lands %1 to the side of the point that was measured.</source>
        <translation>Wird die Spule mit einem Band an dieser Marke angelegt, liegt der Impuls %1 seitlich vom gemessenen Punkt.</translation>
    </message>
    <message>
        <source>Laid by eye over this mark, the pulse lands %1 to the side of the point that was measured.</source>
        <translation>Wird die Spule nach Augenmaß an dieser Marke angelegt, liegt der Impuls %1 seitlich vom gemessenen Punkt.</translation>
    </message>
    <message>
        <source>Laid with a tape over this mark, the pulse lands %1 behind the point that was measured, toward the coil&apos;s handle.</source>
        <translation>Wird die Spule mit einem Band an dieser Marke angelegt, liegt der Impuls %1 hinter dem gemessenen Punkt, zum Griff der Spule hin.</translation>
    </message>
    <message>
        <source>Laid by eye over this mark, the pulse lands %1 behind the point that was measured, toward the coil&apos;s handle.</source>
        <translation>Wird die Spule nach Augenmaß an dieser Marke angelegt, liegt der Impuls %1 hinter dem gemessenen Punkt, zum Griff der Spule hin.</translation>
    </message>
    <message>
        <source>Laid with a tape over this mark, the pulse lands %1 in front of the point that was measured, toward the coil&apos;s front edge.</source>
        <translation>Wird die Spule mit einem Band an dieser Marke angelegt, liegt der Impuls %1 vor dem gemessenen Punkt, zur Vorderkante der Spule hin.</translation>
    </message>
    <message>
        <source>Laid by eye over this mark, the pulse lands %1 in front of the point that was measured, toward the coil&apos;s front edge.</source>
        <translation>Wird die Spule nach Augenmaß an dieser Marke angelegt, liegt der Impuls %1 vor dem gemessenen Punkt, zur Vorderkante der Spule hin.</translation>
    </message>
    <message>
        <source>Mark it with a tape of %1 along the skin instead, as the coil is laid.</source>
        <translation>Stattdessen mit einem Band von %1 auf der Haut markieren, so wie die Spule angelegt wird.</translation>
    </message>
    <message>
        <source>Mark it straight down past the coil&apos;s edge instead, as the coil is laid.</source>
        <translation>Stattdessen senkrecht an der Kante der Spule vorbei markieren, so wie die Spule angelegt wird.</translation>
    </message>
    <message>
        <source>Mark the skin nearest to the coil&apos;s edge instead, as the coil is laid.</source>
        <translation>Stattdessen die der Kante der Spule nächste Stelle der Haut markieren, so wie die Spule angelegt wird.</translation>
    </message>
    <message>
        <source>No tape makes up for it here: make the mark anew once the coil is on.</source>
        <translation>Kein Band gleicht das hier aus; die Marke neu zeichnen, sobald die Spule angelegt ist.</translation>
    </message>
    <message>
        <source>Draw the mark %1 along the skin instead of %2, or turn it into a drop mark once the coil is on.</source>
        <translation>Die Marke %1 weit auf der Haut zeichnen statt %2, oder sie durch eine Lotmarke ersetzen, sobald die Spule angelegt ist.</translation>
    </message>
    <message>
        <source>Draw the mark %1 along the skin instead of %2, or make it anew, on the skin nearest to the edge, once the coil is on.</source>
        <translation>Die Marke %1 weit auf der Haut zeichnen statt %2, oder sie an der der Kante nächsten Stelle der Haut neu zeichnen, sobald die Spule angelegt ist.</translation>
    </message>
    <message>
        <source>%1 along the skin from</source>
        <comment>cm or inches</comment>
        <translation>%1 auf der Haut ab</translation>
    </message>
    <message>
        <source>Edge marks by the %1 rule. In bold: the two or three tapes that find each mark best on this head, and how closely they do, 95 times of 100, where each is read within %2 (typical error).</source>
        <translation>Kantenmarken nach der %1regel. Fett: die zwei oder drei Bänder, mit denen sich jede Marke an diesem Kopf am besten finden lässt, und wie genau in 95 von 100 Fällen, wenn jedes auf %2 genau abgelesen wird (typischer Fehler).</translation>
    </message>
    <message>
        <source>no cortex under the pulse point</source>
        <translation>kein Kortex unter dem Impulspunkt</translation>
    </message>
    <message>
        <source>hotspot: %1 from the chosen mark</source>
        <comment>cm or inches</comment>
        <translation>Hotspot: %1 ab gewählter Marke</translation>
    </message>
    <message>
        <source>gap, %1</source>
        <comment>a unit</comment>
        <translation>Spalt, %1</translation>
    </message>
    <message>
        <source>treatment: %1 from the chosen mark</source>
        <comment>cm or inches</comment>
        <translation>Behandlung: %1 ab gewählter Marke</translation>
    </message>
    <message>
        <source>%1 along the skin</source>
        <comment>cm or inches</comment>
        <translation>%1 auf der Haut</translation>
    </message>
    <message>
        <source>%1 from the site</source>
        <comment>cm or inches</comment>
        <translation>%1 ab Ort</translation>
    </message>
    <message>
        <source>Cap and hair</source>
        <translation>Kappe und Haar</translation>
    </message>
    <message>
        <source>Gap at the site</source>
        <translation>Spalt am Ort</translation>
    </message>
    <message>
        <source>Induced field, in a round model head</source>
        <translation>Induziertes Feld, in einem runden Modellkopf</translation>
    </message>
    <message>
        <source>about %1 from the pulse point</source>
        <translation>etwa %1 vom Impulspunkt</translation>
    </message>
    <message>
        <source>Patch</source>
        <translation>Fleck</translation>
    </message>
    <message>
        <source>leaves about %1 of it</source>
        <comment>a percentage</comment>
        <translation>lässt etwa %1 davon übrig</translation>
    </message>
    <message>
        <source>Handout</source>
        <translation>Merkblatt</translation>
    </message>
    <message>
        <source>Trials by hand: half, and 95 of 100</source>
        <translation>Versuche von Hand: die Hälfte und 95 von 100</translation>
    </message>
    <message>
        <source>Visits to come</source>
        <translation>Kommende Sitzungen</translation>
    </message>
    <message>
        <source>Nasion to inion over the vertex, %1</source>
        <translation>Nasion bis Inion über den Vertex, %1</translation>
    </message>
    <message>
        <source>Left to right tragus over the vertex, %1</source>
        <translation>Tragus links bis Tragus rechts über den Vertex, %1</translation>
    </message>
    <message>
        <source>Around the head: Fpz, left ear, Oz, right ear, %1</source>
        <translation>Um den Kopf: Fpz, linkes Ohr, Oz, rechtes Ohr, %1</translation>
    </message>
    <message>
        <source>Backward from the ear-to-ear strip to the start</source>
        <translation>Vom Ohr-zu-Ohr-Streifen nach hinten zum Start</translation>
    </message>
    <message>
        <source>Forward from the ear-to-ear strip to the start</source>
        <translation>Vom Ohr-zu-Ohr-Streifen nach vorn zum Start</translation>
    </message>
    <message>
        <source>Forward from the hotspot to the treatment site</source>
        <translation>Vom Hotspot nach vorn zum Behandlungsort</translation>
    </message>
    <message>
        <source>half: vertex</source>
        <translation>Hälfte: Vertex</translation>
    </message>
    <message>
        <source>to the start</source>
        <translation>zum Start</translation>
    </message>
    <message>
        <source>ear-to-ear strip</source>
        <translation>Ohr-zu-Ohr-Streifen</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>hotspot</source>
        <translation>Hotspot</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>linke Seite</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>rechte Seite</translation>
    </message>
    <message>
        <source>, piece %1 of %2</source>
        <translation>, Stück %1 von %2</translation>
    </message>
    <message>
        <source>nose</source>
        <translation>Nase</translation>
    </message>
    <message>
        <source>pulse point wanted to edge mark: %1 of tape</source>
        <translation>gewollter Impulspunkt bis Kantenmarke: Band %1</translation>
    </message>
    <message>
        <source>the coil&apos;s front, centre to front edge %1</source>
        <translation>die Spulenfront, Mitte bis Vorderkante %1</translation>
    </message>
    <message>
        <source>Strips</source>
        <translation>Streifen</translation>
    </message>
    <message>
        <source>Pulses and answers, visit %1</source>
        <translation>Impulse und Antworten, Sitzung %1</translation>
    </message>
    <message>
        <source>Spot</source>
        <translation>Rasterpunkt</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Schwerpunkt</translation>
    </message>
    <message>
        <source>Threshold at the spot: %1</source>
        <translation>Schwelle am Rasterpunkt: %1</translation>
    </message>
    <message>
        <source>Threshold written down</source>
        <translation>Notierte Schwelle</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Threshold</source>
        <translation>Schwelle</translation>
    </message>
    <message>
        <source>Edge mark, the same</source>
        <translation>Kantenmarke, ebenso</translation>
    </message>
    <message>
        <source>Marked anew.</source>
        <translation>Neu markiert.</translation>
    </message>
    <message>
        <source>in the hand</source>
        <translation>in der Hand</translation>
    </message>
    <message>
        <source>Not seen from here: %1</source>
        <translation>Von hier nicht zu sehen: %1</translation>
    </message>
    <message>
        <source>No room beside its mark: %1</source>
        <translation>Kein Platz neben der Marke: %1</translation>
    </message>
    <message>
        <source>visit %1</source>
        <translation>Sitzung %1</translation>
    </message>
    <message>
        <source>95 of 100 such visits</source>
        <translation>95 von 100 solchen Sitzungen</translation>
    </message>
    <message>
        <source>Pulse by each visit&apos;s marks</source>
        <translation>Impuls nach den Marken jeder Sitzung</translation>
    </message>
    <message>
        <source>Edge mark, tape rule: edge %1 above this mark</source>
        <translation>Kantenmarke, Bandregel: Kante %1 über dieser Marke</translation>
    </message>
    <message>
        <source>tape rule: edge %1 above this mark</source>
        <translation>Bandregel: Kante %1 über dieser Marke</translation>
    </message>
    <message>
        <source>Edge mark, drop rule: edge %1 above this mark</source>
        <translation>Kantenmarke, Lotregel: Kante %1 über dieser Marke</translation>
    </message>
    <message>
        <source>drop rule: edge %1 above this mark</source>
        <translation>Lotregel: Kante %1 über dieser Marke</translation>
    </message>
    <message>
        <source>Edge mark, nearest rule: edge %1 above this mark</source>
        <translation>Kantenmarke, Nahpunktregel: Kante %1 über dieser Marke</translation>
    </message>
    <message>
        <source>nearest rule: edge %1 above this mark</source>
        <translation>Nahpunktregel: Kante %1 über dieser Marke</translation>
    </message>
    <message>
        <source>Edge mark, edge %1 above it</source>
        <translation>Kantenmarke, Kante %1 darüber</translation>
    </message>
    <message>
        <source>edge mark, edge %1 above it</source>
        <translation>Kantenmarke, Kante %1 darüber</translation>
    </message>
    <message>
        <source>Field under the coil&apos;s centre</source>
        <translation>Feld unter der Mitte der Spule</translation>
    </message>
    <message>
        <source>No field is known of this coil here.</source>
        <translation>Von dieser Spule ist hier kein Feld bekannt.</translation>
    </message>
    <message>
        <source>Not this patient&apos;s field; no dose and no effect follow from it.</source>
        <translation>Nicht das Feld dieses Patienten; daraus folgen keine Dosis und keine Wirkung.</translation>
    </message>
    <message>
        <source>Field over 71 %, over half (model)</source>
        <translation>Feld über 71 %, über die Hälfte (Modell)</translation>
    </message>
    <message>
        <source>Line of the field (model)</source>
        <translation>Linie des Feldes (Modell)</translation>
    </message>
    <message>
        <source>Gap under the coil, %1</source>
        <comment>mm or inches</comment>
        <translation>Spalt unter der Spule, %1</translation>
    </message>
    <message>
        <source>touches; a line every %1</source>
        <translation>Berührung; eine Linie je %1</translation>
    </message>
    <message>
        <source>Site %1</source>
        <translation>Ort %1</translation>
    </message>
    <message>
        <source>Treatment site, %1</source>
        <translation>Behandlungsort, %1</translation>
    </message>
    <message>
        <source>site if the middle spot answers</source>
        <translation>Ort, falls der mittlere Rasterpunkt antwortet</translation>
    </message>
    <message>
        <source>treatment site</source>
        <translation>Behandlungsort</translation>
    </message>
    <message>
        <source>Site if the middle spot answers</source>
        <translation>Ort, falls der mittlere Rasterpunkt antwortet</translation>
    </message>
    <message>
        <source>centre to front edge %1</source>
        <translation>Mitte bis Vorderkante %1</translation>
    </message>
    <message>
        <source>tape, %1, from</source>
        <comment>cm or inches</comment>
        <translation>Band, %1, ab</translation>
    </message>
    <message>
        <source>Tape, a tick each %1</source>
        <comment>cm or inch</comment>
        <translation>Band, ein Strich je %1</translation>
    </message>
    <message>
        <source>95 of 100 trials by hand</source>
        <translation>95 von 100 Versuchen von Hand</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>a percentage</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Why the gap matters</source>
        <translation>Warum der Spalt zählt</translation>
    </message>
    <message>
        <source>Why %1</source>
        <translation>Warum %1</translation>
    </message>
    <message>
        <source>The field runs along the coil&apos;s front axis, and its patch is longest that way. At about 45° to the midline this crosses the central sulcus, onto the precentral gyrus. In a round model head a coil turned by 20° leaves %1 of the field along that line, one turned by 45° %2.</source>
        <translation>Das Feld verläuft entlang der Frontachse der Spule, und sein Fleck ist in dieser Richtung am längsten. Bei etwa 45° zur Mittellinie quert das den Sulcus centralis, hin zum Gyrus praecentralis. In einem runden Modellkopf lässt eine um 20° gedrehte Spule %1 des Feldes entlang dieser Linie übrig, eine um 45° gedrehte %2.</translation>
    </message>
    <message>
        <source>The vertex lies at half of each length on any head, so whoever has a tape can find it again.</source>
        <translation>Der Vertex liegt an jedem Kopf bei der Hälfte jeder Länge, also kann ihn jeder mit einem Maßband wiederfinden.</translation>
    </message>
    <message>
        <source>One tape alone tells how far forward the vertex lies, the other how far to the side; it takes both.</source>
        <translation>Ein Band allein sagt, wie weit vorn der Vertex liegt, das andere, wie weit seitlich; es braucht beide.</translation>
    </message>
    <message>
        <source>The part of the brain that moves a hand lies to the side of the vertex, on the side across from that hand.</source>
        <translation>Der Teil des Gehirns, der eine Hand bewegt, liegt seitlich vom Vertex, auf der Seite gegenüber dieser Hand.</translation>
    </message>
    <message>
        <source>The coil is turned because the fold of the brain that moves the hand runs aslant: with the coil about square to it a pulse of the least output is answered.</source>
        <translation>Die Spule wird gedreht, weil die Hirnwindung, die die Hand bewegt, schräg verläuft: Steht die Spule etwa senkrecht zu ihr, genügt für eine Antwort die geringste Leistung.</translation>
    </message>
    <message>
        <source>The twitch shows on this person where a pulse reaches the part that moves the hand. A tape cannot.</source>
        <translation>Das Zucken zeigt an diesem Menschen, wo ein Impuls den Teil erreicht, der die Hand bewegt. Ein Maßband kann das nicht.</translation>
    </message>
    <message>
        <source>One pulse at a time, the technician watches the thumb and index finger of the relaxed right hand. The place that twitches steadily is the hotspot.</source>
        <translation>Immer nur ein Impuls; dabei Daumen und Zeigefinger der entspannten rechten Hand beobachten. Die Stelle, bei der es stetig zuckt, ist der Hotspot.</translation>
    </message>
    <message>
        <source>One pulse at a time, the technician watches the thumb and index finger of the relaxed left hand. The place that twitches steadily is the hotspot.</source>
        <translation>Immer nur ein Impuls; dabei Daumen und Zeigefinger der entspannten linken Hand beobachten. Die Stelle, bei der es stetig zuckt, ist der Hotspot.</translation>
    </message>
    <message>
        <source>A distance from the place that answered carries over what the tapes had missed; one from the vertex would miss it again.</source>
        <translation>Eine Strecke ab der Stelle, die geantwortet hat, übernimmt, was den Bändern entgangen war; eine ab dem Vertex würde es wieder verfehlen.</translation>
    </message>
    <message>
        <source>The coil hides its own centre, so its edge needs a mark. And the coil is flat, the head round: the edge hangs in the air, and tape, drop and nearest come down at three places.</source>
        <translation>Die Spule verdeckt ihre eigene Mitte, daher braucht ihre Kante eine Marke. Und die Spule ist flach, der Kopf rund: Die Kante hängt in der Luft, und Band, Lot und Nahpunkt treffen an drei Stellen auf.</translation>
    </message>
    <message>
        <source>The gap between edge and skin is %1 there, so do it the same way at every visit.</source>
        <translation>Der Spalt zwischen Kante und Haut beträgt dort %1, also in jeder Sitzung gleich vorgehen.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a depth</comment>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>the vertex</source>
        <translation>Vertex</translation>
    </message>
    <message>
        <source>the nasion</source>
        <translation>Nasion</translation>
    </message>
    <message>
        <source>the left tragus</source>
        <translation>Tragus links</translation>
    </message>
    <message>
        <source>the right tragus</source>
        <translation>Tragus rechts</translation>
    </message>
    <message>
        <source>Site mark</source>
        <translation>Ortsmarke</translation>
    </message>
    <message>
        <source>%1 in</source>
        <comment>inches</comment>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>in</source>
        <comment>inches</comment>
        <translation>in</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>%1 away from the midline</source>
        <comment>an angle</comment>
        <translation>%1 von der Mittellinie weg</translation>
    </message>
    <message>
        <source>%1 to the midline</source>
        <comment>an angle</comment>
        <translation>%1 zur Mittellinie</translation>
    </message>
    <message>
        <source>The flat coil rests gently on your head, and you hear it click.</source>
        <translation>Die flache Spule liegt sanft auf Ihrem Kopf, und Sie hören sie klicken.</translation>
    </message>
    <message>
        <source>Each click sends a short magnetic pulse through the skin to the part of the brain under the green diamond, which is the place your clinician has chosen.</source>
        <translation>Jeder Klick schickt einen kurzen magnetischen Impuls durch die Haut zu dem Teil des Gehirns unter der grünen Raute; das ist die Stelle, die Ihre Ärztin oder Ihr Arzt gewählt hat.</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Was geschieht</translation>
    </message>
    <message>
        <source>What you feel and hear</source>
        <translation>Was Sie spüren und hören</translation>
    </message>
    <message>
        <source>Each click is loud, like a snap of the fingers beside your ear, so you are given ear plugs. You feel a tap on the skin under the coil, and muscles near it may twitch. Say so at once if anything hurts or feels wrong: it can be stopped at any moment.</source>
        <translation>Jeder Klick ist laut, wie ein Fingerschnippen neben dem Ohr, deshalb bekommen Sie Ohrstöpsel. Sie spüren ein Klopfen auf der Haut unter der Spule, und Muskeln in der Nähe können zucken. Sagen Sie sofort Bescheid, wenn etwas weh tut oder sich falsch anfühlt: Man kann jederzeit aufhören.</translation>
    </message>
    <message>
        <source>How long it takes</source>
        <translation>Wie lange es dauert</translation>
    </message>
    <message>
        <source>You sit in a chair and stay awake. The first time takes longest, since the place is looked for; after that, marks on a cap lead back to it. How many visits there are, how long each one is, and what you may do afterwards, your clinician tells you.</source>
        <translation>Sie sitzen in einem Stuhl und bleiben wach. Das erste Mal dauert am längsten, weil die Stelle gesucht wird; danach führen Marken auf einer Kappe zu ihr zurück. Wie viele Sitzungen es gibt, wie lange jede dauert und was Sie danach tun dürfen, sagt Ihnen Ihre Ärztin oder Ihr Arzt.</translation>
    </message>
    <message>
        <source>%1 forward of the middle spot, if that one answers</source>
        <translation>%1 vor dem mittleren Rasterpunkt, falls dieser antwortet</translation>
    </message>
    <message>
        <source>at %1</source>
        <comment>a landmark</comment>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>not found yet</source>
        <translation>noch nicht gefunden</translation>
    </message>
    <message>
        <source>the start</source>
        <translation>Suchstart</translation>
    </message>
    <message>
        <source>one step forward</source>
        <translation>ein Schritt nach vorn</translation>
    </message>
    <message>
        <source>one step back</source>
        <translation>ein Schritt nach hinten</translation>
    </message>
    <message>
        <source>one step outward</source>
        <translation>ein Schritt nach außen</translation>
    </message>
    <message>
        <source>one step toward the midline</source>
        <translation>ein Schritt zur Mittellinie</translation>
    </message>
    <message>
        <source>Demo case, not a real person: %1.</source>
        <translation>Beispielfall, keine wirkliche Person: %1.</translation>
    </message>
    <message>
        <source>Angle card: lay the long line along the midline&apos;s direction, the nose end to the nose; fold the second half behind the first</source>
        <translation>Winkelkarte: die lange Linie in Richtung der Mittellinie legen, das Nasenende zur Nase; die zweite Hälfte hinter die erste falten</translation>
    </message>
    <message>
        <source>Site mark, %1 from vertex / nasion / tragi</source>
        <translation>Ortsmarke, %1 ab Vertex / Nasion / Tragi</translation>
    </message>
    <message>
        <source>on the spot: %1</source>
        <comment>of the grid</comment>
        <translation>auf dem Rasterpunkt: %1</translation>
    </message>
    <message>
        <source>Bar: pulses answered, at %1 %</source>
        <translation>Balken: beantwortete Impulse, bei %1 %</translation>
    </message>
    <message>
        <source>Search start, wanted here: %1 from the pulse</source>
        <translation>Suchstart, hier gewollt: %1 vom Impuls</translation>
    </message>
    <message>
        <source>A magnetic field spreads as it leaves the coil, so every millimetre between coil and brain takes some of it away.</source>
        <translation>Ein Magnetfeld breitet sich aus, wenn es die Spule verlässt; jeder Millimeter zwischen Spule und Gehirn nimmt deshalb etwas davon weg.</translation>
    </message>
    <message>
        <source>Nerve fibres answer most readily to a field along them, and those of the hand&apos;s fold run across it.</source>
        <translation>Nervenfasern antworten am leichtesten auf ein Feld, das längs von ihnen verläuft, und die der Handwindung verlaufen quer zu ihr.</translation>
    </message>
    <message>
        <source>Demo case, not a real person: %1</source>
        <translation>Beispielfall, keine wirkliche Person: %1</translation>
    </message>
    <message>
        <source>Held by hand: not where the plan has it</source>
        <translation>In der Hand: nicht dort, wo der Plan sie hat</translation>
    </message>
    <message>
        <source>Each click sends a short magnetic pulse through the skin to the part of the brain that is lit under the green diamond, the place your clinician has chosen. The lit part is about as large as %1, strongest in its middle and fading outward. It is drawn on a sample brain, not your own.</source>
        <translation>Jedes Klicken schickt einen kurzen magnetischen Impuls durch die Haut zu dem Teil des Gehirns, der unter der grünen Raute leuchtet, der Stelle, die Ihre Ärztin oder Ihr Arzt gewählt hat. Der leuchtende Teil ist etwa so groß wie %1, in der Mitte am stärksten und nach außen schwächer. Er ist auf ein Beispielgehirn gezeichnet, nicht auf Ihr eigenes.</translation>
    </message>
    <message>
        <source>Each click sends a short magnetic pulse through the skin to the part of the brain that is lit under the green diamond, the place your clinician has chosen. It is drawn on a sample brain, not your own.</source>
        <translation>Jedes Klicken schickt einen kurzen magnetischen Impuls durch die Haut zu dem Teil des Gehirns, der unter der grünen Raute leuchtet, der Stelle, die Ihre Ärztin oder Ihr Arzt gewählt hat. Er ist auf ein Beispielgehirn gezeichnet, nicht auf Ihr eigenes.</translation>
    </message>
    <message>
        <source>To find the marks again: tape in %1 from</source>
        <comment>cm or inches</comment>
        <translation>Zum Wiederfinden der Marken: Band in %1 ab</translation>
    </message>
    <message>
        <source>The field fades fast with distance. In a round model head %5 of hair leave %1 of it at the wanted place, %6 leave %2, %7 leave %3; a wing lifted by 10° leaves %4. Part the hair, and look under both wings.</source>
        <translation>Das Feld nimmt mit dem Abstand schnell ab. In einem runden Modellkopf lassen %5 Haar an der gewollten Stelle %1 davon übrig, %6 %2, %7 %3; ein um 10° angehobener Flügel %4. Das Haar scheiteln und unter beide Flügel sehen.</translation>
    </message>
    <message>
        <source>en</source>
        <comment>this language, by ISO 639-1</comment>
        <translation>de</translation>
    </message>
    <message>
        <source>The head. Arrow keys turn it, plus and minus bring it nearer and further.</source>
        <translation>Der Kopf. Pfeiltasten drehen ihn, Plus und Minus holen ihn näher und weiter weg.</translation>
    </message>
    <message>
        <source>With Shift, arrow keys move the coil by a millimetre; Page Up and Page Down turn it by a degree, Escape puts it back.</source>
        <translation>Mit Umschalt verschieben Pfeiltasten die Spule um einen Millimeter; Bild auf und Bild ab drehen sie um ein Grad, Escape legt sie zurück.</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Back</source>
        <comment>a side of the head</comment>
        <translation>Hinten</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Nearer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <source>Further</source>
        <translation>Weiter weg</translation>
    </message>
    <message>
        <source>As at first</source>
        <translation>Wie zu Anfang</translation>
    </message>
    <message>
        <source>What is looked at</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Show the numbers large, one at a time</source>
        <translation>Die Zahlen groß zeigen, eine nach der anderen</translation>
    </message>
    <message>
        <source>The numbers of the marks, one at a time</source>
        <translation>Die Zahlen der Marken, eine nach der anderen</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Move the coil</source>
        <translation>Spule verschieben</translation>
    </message>
    <message>
        <source>Drag the coil over the head, or use the buttons. This changes nothing in the plan.</source>
        <translation>Die Spule über den Kopf ziehen oder die Knöpfe nehmen. Am Plan ändert das nichts.</translation>
    </message>
    <message>
        <source>Coil a millimetre forward</source>
        <translation>Spule einen Millimeter nach vorn</translation>
    </message>
    <message>
        <source>Coil a millimetre backward</source>
        <translation>Spule einen Millimeter nach hinten</translation>
    </message>
    <message>
        <source>Coil a millimetre toward the midline</source>
        <translation>Spule einen Millimeter zur Mittellinie hin</translation>
    </message>
    <message>
        <source>Coil a millimetre away from the midline</source>
        <translation>Spule einen Millimeter von der Mittellinie weg</translation>
    </message>
    <message>
        <source>Angle to the midline</source>
        <translation>Winkel zur Mittellinie</translation>
    </message>
    <message>
        <source>Put the coil back on the site</source>
        <translation>Spule zurück auf den Ort legen</translation>
    </message>
    <message>
        <source>Check today&apos;s marks</source>
        <translation>Heutige Marken prüfen</translation>
    </message>
    <message>
        <source>The plan&apos;s edge mark falls off the head, so there is nothing to lay the coil over and nothing to check.</source>
        <translation>Die Kantenmarke des Plans fällt neben den Kopf; es gibt also nichts, worüber die Spule gelegt wird, und nichts zu prüfen.</translation>
    </message>
    <message>
        <source>Type what the tape reads from two or more points to each of today&apos;s marks, in %1.</source>
        <translation>Eintippen, was das Maßband von zwei oder mehr Punkten bis zu jeder der heutigen Marken zeigt, in %1.</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>This is a drawing of a head, scaled to the tapes of the person&apos;s head; it is not that person, and places on it are a few millimetres off those on that head.</source>
        <translation>Das ist die Zeichnung eines Kopfes, den Maßen des Kopfes angepasst; es ist nicht die Person, und Stellen liegen darauf einige Millimeter anders als auf deren Kopf.</translation>
    </message>
    <message>
        <source>This is the scalp above brow and ears of a person&apos;s head, made from a scan; the face and the ears are not in this page.</source>
        <translation>Das ist die Kopfhaut über Brauen und Ohren eines Menschen, aus einem Scan; Gesicht und Ohren sind nicht in dieser Seite.</translation>
    </message>
    <message>
        <source>This is a picture of a person&apos;s head, made from a scan. It shows that person&apos;s face: keep this page as you keep the scan.</source>
        <translation>Das ist das Bild vom Kopf eines Menschen, aus einem Scan. Es zeigt dessen Gesicht: Diese Seite ist aufzubewahren wie der Scan.</translation>
    </message>
    <message>
        <source>The skin is thinned for this page. Tapes to a coil moved here agree with those of the whole scan within %1.</source>
        <translation>Die Haut ist für diese Seite ausgedünnt. Bandmaße zu einer hier verschobenen Spule stimmen mit denen des ganzen Scans auf %1 überein.</translation>
    </message>
    <message>
        <source>Site %1.</source>
        <translation>Ort %1.</translation>
    </message>
    <message>
        <source>Treatment site: %1.</source>
        <translation>Behandlungsort: %1.</translation>
    </message>
    <message>
        <source>From the vertex %1 toward the ear, then %2 forward: the start. Nine spots, %3 apart.</source>
        <translation>Vom Vertex %1 zum Ohr hin, dann %2 nach vorn: der Anfang. Neun Stellen im Abstand von %3.</translation>
    </message>
    <message>
        <source>Landmarks</source>
        <translation>Landmarken</translation>
    </message>
    <message>
        <source>Nasion to inion %1, tragus to tragus %2, both over the vertex; around the head %3.</source>
        <translation>Nasion bis Inion %1, Tragus bis Tragus %2, beide über den Vertex; um den Kopf %3.</translation>
    </message>
    <message>
        <source>Coil on the site</source>
        <translation>Spule auf dem Ort</translation>
    </message>
    <message>
        <source>%1 rule</source>
        <translation>Regel: %1</translation>
    </message>
    <message>
        <source>Coil laid by</source>
        <translation>Spule gelegt nach</translation>
    </message>
    <message>
        <source>Tape: so far along the skin from the pulse point. Drop: straight down the coil&apos;s axis past its front edge. Nearest: the skin nearest to that edge. A flat coil on a round head has three edge marks; use one rule at every visit.</source>
        <translation>Band: so weit über die Haut vom Impulspunkt. Lot: an der Vorderkante vorbei gerade die Achse der Spule hinab. Nahpunkt: die Haut, die dieser Kante am nächsten ist. Eine flache Spule auf einem runden Kopf hat drei Kantenmarken; bei jedem Besuch dieselbe Regel nehmen.</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Legend</source>
        <translation>Legende</translation>
    </message>
    <message>
        <source>What happens with the coil</source>
        <translation>Was mit der Spule geschieht</translation>
    </message>
    <message>
        <source>If this line stays, this browser is too old to draw the head, or scripts are switched off in it: open the page in a browser of 2023 or newer. What is written here holds all the same.</source>
        <translation>Bleibt diese Zeile stehen, ist dieser Browser zu alt, um den Kopf zu zeichnen, oder Skripte sind darin abgeschaltet: die Seite in einem Browser von 2023 oder neuer öffnen. Was hier geschrieben steht, gilt trotzdem.</translation>
    </message>
    <message>
        <source>A picture of a head, made from a scan</source>
        <translation>Das Bild eines Kopfes, aus einem Scan erstellt</translation>
    </message>
    <message>
        <source>A drawing of a head, shaped by a tape measure</source>
        <translation>Die Zeichnung eines Kopfes, nach dem Maßband geformt</translation>
    </message>
    <message>
        <source>Licences of what is in this page</source>
        <translation>Lizenzen dessen, was in dieser Seite ist</translation>
    </message>
    <message>
        <source>This browser cannot draw the head (it has no WebGL 2). What is written here holds all the same.</source>
        <translation>Dieser Browser kann den Kopf nicht zeichnen (er hat kein WebGL 2). Was hier geschrieben steht, gilt trotzdem.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>pulse %1 from the site</source>
        <translation>Impuls %1 vom Ort</translation>
    </message>
    <message>
        <source>%1 forward of it</source>
        <translation>%1 vor ihm</translation>
    </message>
    <message>
        <source>%1 behind it</source>
        <translation>%1 hinter ihm</translation>
    </message>
    <message>
        <source>%1 toward the midline</source>
        <translation>%1 zur Mittellinie hin</translation>
    </message>
    <message>
        <source>%1 away from the midline</source>
        <translation>%1 von der Mittellinie weg</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>Nahpunkt</translation>
    </message>
    <message>
        <source>%1: edge %2 above its mark</source>
        <comment>a rule, and how far its mark lies from the edge</comment>
        <translation>%1: Kante %2 über ihrer Marke</translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation>Spalt %1</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>Spule</translation>
    </message>
    <message>
        <source>The coil cannot lie there; it stays where it last could.</source>
        <translation>Dort kann die Spule nicht liegen; sie bleibt, wo sie zuletzt lag.</translation>
    </message>
    <message>
        <source>The coil is back where the plan has it.</source>
        <translation>Die Spule liegt wieder, wo der Plan sie hat.</translation>
    </message>
    <message>
        <source>getting ready…</source>
        <translation>wird vorbereitet…</translation>
    </message>
    <message>
        <source>The coil cannot be moved in this browser (%1). What is written here holds all the same.</source>
        <translation>In diesem Browser lässt sich die Spule nicht verschieben (%1). Was hier geschrieben steht, gilt trotzdem.</translation>
    </message>
    <message>
        <source>Tape distances are being worked out…</source>
        <translation>Bandmaße werden berechnet…</translation>
    </message>
    <message>
        <source>Agrees</source>
        <translation>Stimmt</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Unsure</source>
        <translation>Unsicher</translation>
    </message>
    <message>
        <source>The tapes meet at so flat an angle that the mark may lie up to %1 off; measure one more tape to it.</source>
        <translation>Die Maßbänder treffen sich so flach, dass die Marke bis zu %1 anders liegen kann; ein weiteres Maß dazu nehmen.</translation>
    </message>
    <message>
        <source>Several places fit the site mark&apos;s tapes: choose one, or measure one more tape.</source>
        <translation>Zu den Maßen der Ortsmarke passen mehrere Stellen: eine wählen oder ein weiteres Maß nehmen.</translation>
    </message>
    <message>
        <source>Several places fit the edge mark&apos;s tapes: choose one, or measure one more tape.</source>
        <translation>Zu den Maßen der Kantenmarke passen mehrere Stellen: eine wählen oder ein weiteres Maß nehmen.</translation>
    </message>
    <message>
        <source>Place %1, %2 from the wanted one</source>
        <comment>A, B; a length</comment>
        <translation>Stelle %1, %2 von der gewollten</translation>
    </message>
    <message>
        <source>Type two or more tapes of each mark.</source>
        <translation>Von jeder Marke zwei oder mehr Maße eintippen.</translation>
    </message>
    <message>
        <source>%1 is no length: type it as read from the tape, such as %2.</source>
        <translation>%1 ist keine Länge: so eintippen, wie das Maßband sie zeigt, etwa %2.</translation>
    </message>
    <message>
        <source>Looking for the marks…</source>
        <translation>Die Marken werden gesucht…</translation>
    </message>
    <message>
        <source>today&apos;s site mark</source>
        <translation>heutige Ortsmarke</translation>
    </message>
    <message>
        <source>today&apos;s edge mark</source>
        <translation>heutige Kantenmarke</translation>
    </message>
    <message>
        <source>today&apos;s pulse</source>
        <translation>heutiger Impuls</translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <comment>a mark, and where the tape begins</comment>
        <translation>%1, ab %2</translation>
    </message>
    <message>
        <source>Step by step: each trainee&apos;s last attempt</source>
        <translation>Schritt für Schritt: der letzte Durchgang jedes Lernenden</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Own error, %1: quarter</source>
        <comment>%1 is mm or in</comment>
        <translation>Eigener Fehler, %1: ein Viertel</translation>
    </message>
    <message>
        <source>three quarters</source>
        <translation>drei Viertel</translation>
    </message>
    <message>
        <source>with what came before</source>
        <translation>mit dem Vorigen</translation>
    </message>
    <message>
        <source>angle, degrees</source>
        <translation>Winkel, Grad</translation>
    </message>
    <message>
        <source>Own error: from where the step should be given what came before, so that an error is paid for once. Half of the trainees lie between a quarter and three quarters.</source>
        <translation>Eigener Fehler: von dort, wo der Schritt nach allem Vorigen liegen sollte, damit ein Fehler nur einmal zählt. Die Hälfte der Lernenden liegt zwischen einem Viertel und drei Vierteln.</translation>
    </message>
    <message>
        <source>Class page</source>
        <translation>Klassenblatt</translation>
    </message>
    <message>
        <source>head drawn for the number %1</source>
        <translation>gezogener Kopf zur Zahl %1</translation>
    </message>
    <message>
        <source>the case&apos;s own head</source>
        <translation>der eigene Kopf des Falls</translation>
    </message>
    <message>
        <source>1 trainee</source>
        <translation>1 Lernender</translation>
    </message>
    <message>
        <source>%1 trainees</source>
        <translation>%1 Lernende</translation>
    </message>
    <message>
        <source>Each disc: where one trainee&apos;s pulse goes. Diamond: where it was wanted.</source>
        <translation>Jede Scheibe: wohin der Impuls eines Lernenden geht. Raute: wo er gewollt war.</translation>
    </message>
    <message>
        <source>Strongest, %1 under the skin</source>
        <translation>Am stärksten, %1 unter der Haut</translation>
    </message>
    <message>
        <source>over 71 % of that on about %1, over half on about %2</source>
        <translation>über 71 % davon auf etwa %1, über die Hälfte auf etwa %2</translation>
    </message>
    <message>
        <source>A gap of %1 more</source>
        <translation>Ein Spalt von %1 mehr</translation>
    </message>
    <message>
        <source>%1 under the skin</source>
        <comment>cm or inches</comment>
        <translation>%1 unter der Haut</translation>
    </message>
    <message>
        <source>tapes: not yet</source>
        <comment>tape distances are not worked out</comment>
        <translation>Band: noch nicht</translation>
    </message>
    <message>
        <source>the coil</source>
        <translation>die Spule</translation>
    </message>
    <message>
        <source>the place that lights up</source>
        <translation>die Stelle, die leuchtet</translation>
    </message>
    <message>
        <source>the place it reaches</source>
        <translation>die Stelle, die er erreicht</translation>
    </message>
    <message>
        <source>the tape as it lies right</source>
        <translation>das Band, wie es richtig liegt</translation>
    </message>
    <message>
        <source>your tape</source>
        <translation>Ihr Band</translation>
    </message>
    <message>
        <source>where it should be</source>
        <translation>wo es sein soll</translation>
    </message>
    <message>
        <source>where it should be, by your marks</source>
        <translation>wo es nach Ihren Marken sein soll</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>Ihre Marke</translation>
    </message>
    <message>
        <source>pulse wanted</source>
        <translation>gewollter Impuls</translation>
    </message>
    <message>
        <source>your pulse</source>
        <translation>Ihr Impuls</translation>
    </message>
    <message>
        <source>From close by: forward is up, a square is %1.</source>
        <translation>Aus der Nähe: vorn ist oben, ein Kästchen ist %1.</translation>
    </message>
    <message>
        <source>Files left out: %1.</source>
        <translation>Ausgelassene Dateien: %1.</translation>
    </message>
    <message>
        <source>Heads differ by %1 and more, and every place on the scalp is found as a share of these two lengths.</source>
        <translation>Köpfe unterscheiden sich um %1 und mehr, und jede Stelle der Kopfhaut wird als Anteil dieser beiden Längen gefunden.</translation>
    </message>
    <message>
        <source>Where the hand answers differs from person to person by %1 and more; only trying tells.</source>
        <translation>Wo die Hand antwortet, ist von Mensch zu Mensch um %1 und mehr verschieden; nur Ausprobieren zeigt es.</translation>
    </message>
    <message>
        <source>Measure both fine lines at the edge of this page: %1. If one is not, do not use the strips; print them again at 100 %, without fitting to the page. For this head alone; training and illustration, the device&apos;s instructions and the licensed prescriber come first.</source>
        <translation>Beide feinen Linien am Rand dieser Seite nachmessen: %1. Stimmt eine nicht, die Streifen nicht verwenden; mit 100 % und ohne Anpassen an die Seite neu drucken. Nur für diesen Kopf; zur Schulung und Veranschaulichung, die Gebrauchsanweisung des Geräts und die approbierte verordnende Fachkraft gehen vor.</translation>
    </message>
    <message>
        <source>Cut along the lines. Glue the piece with a number under it on the tab of the same number, its left end on the line before the tab. Lay a strip taut, its first line on its point, and draw at its lines: nothing is read.</source>
        <translation>An den Linien ausschneiden. Das Stück mit einer Nummer darunter auf die Lasche derselben Nummer kleben, sein linkes Ende auf die Linie vor der Lasche. Den Streifen straff auflegen, seine erste Linie auf seinen Punkt, und an seinen Linien zeichnen: abgelesen wird nichts.</translation>
    </message>
    <message>
        <source>this line: %1</source>
        <translation>diese Linie: %1</translation>
    </message>
    <message>
        <source>left end: %1</source>
        <translation>linkes Ende: %1</translation>
    </message>
    <message>
        <source>front axis, %1</source>
        <translation>Frontachse, %1</translation>
    </message>
    <message>
        <source>inches</source>
        <comment>tape in inches from</comment>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>inch</source>
        <comment>a tick each inch</comment>
        <translation>Zoll</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::AngleField</name>
    <message>
        <source>From %1 to %2 whole degrees.</source>
        <translation>Von %1 bis %2 ganze Grad.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::AnswerSettingsFields</name>
    <message>
        <source>An answer is a twitch of the</source>
        <translation>Antwort ist ein Zucken von</translation>
    </message>
    <message>
        <source>thumb</source>
        <translation>Daumen</translation>
    </message>
    <message>
        <source>The thumb alone</source>
        <translation>Nur der Daumen</translation>
    </message>
    <message>
        <source>The index finger alone</source>
        <translation>Nur der Zeigefinger</translation>
    </message>
    <message>
        <source>either</source>
        <translation>einem davon</translation>
    </message>
    <message>
        <source>The thumb or the index finger</source>
        <translation>Der Daumen oder der Zeigefinger</translation>
    </message>
    <message>
        <source>5 of 10</source>
        <translation>5 von 10</translation>
    </message>
    <message>
        <source>Five answers to ten pulses</source>
        <translation>Fünf Antworten auf zehn Impulse</translation>
    </message>
    <message>
        <source>4 of 8</source>
        <translation>4 von 8</translation>
    </message>
    <message>
        <source>Four answers to eight pulses</source>
        <translation>Vier Antworten auf acht Impulse</translation>
    </message>
    <message>
        <source>Step of the output</source>
        <translation>Schritt der Leistung</translation>
    </message>
    <message>
        <source>Fine step, with Shift</source>
        <translation>Feiner Schritt, mit Umschalt</translation>
    </message>
    <message>
        <source>Answers counted</source>
        <translation>Gezählte Antworten</translation>
    </message>
    <message>
        <source>Counting rule</source>
        <translation>Zählregel</translation>
    </message>
    <message>
        <source>index finger</source>
        <translation>Zeigefinger</translation>
    </message>
    <message>
        <source>An output is enough with</source>
        <translation>Eine Leistung genügt bei</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Write whole percent, as the stimulator shows.</source>
        <translation>Ganze Prozent schreiben, wie der Stimulator sie zeigt.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CapFields</name>
    <message>
        <source>Cap</source>
        <translation>Kappe</translation>
    </message>
    <message>
        <source>By its brim</source>
        <translation>Per Rand</translation>
    </message>
    <message>
        <source>Cap: enter the heights of its brim</source>
        <translation>Kappe: Höhen ihres Randes eingeben</translation>
    </message>
    <message>
        <source>Two or more heights say how the cap has slipped since the marks were made</source>
        <translation>Zwei oder mehr Höhen sagen, wie die Kappe verrutscht ist, seit die Marken gezeichnet wurden</translation>
    </message>
    <message>
        <source>brim over the nasion</source>
        <translation>Rand über dem Nasion</translation>
    </message>
    <message>
        <source>brim over the left tragus</source>
        <translation>Rand über dem Tragus links</translation>
    </message>
    <message>
        <source>brim over the right tragus</source>
        <translation>Rand über dem Tragus rechts</translation>
    </message>
    <message>
        <source>brim over the inion</source>
        <translation>Rand über dem Inion</translation>
    </message>
    <message>
        <source>arrow right of the nasion</source>
        <translation>Pfeil rechts vom Nasion</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Heights by tape, straight up toward the vertex. The arrow where it passes the nasion, to the patient&apos;s right; to the left with a minus.</source>
        <translation>Höhen mit dem Band, gerade hinauf zum Vertex. Der Pfeil dort, wo er am Nasion vorbeigeht, zur rechten Patientenseite; zur linken mit Minus.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CaseFiles</name>
    <message>
        <source>Cases (*.json)</source>
        <translation>Fälle (*.json)</translation>
    </message>
    <message>
        <source>Heads (*.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;All files (*)</source>
        <translation>Köpfe (*.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Cases and heads (*.json *.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;All files (*)</source>
        <translation>Fälle und Köpfe (*.json *.obj *.ply *.stl *.gltf *.glb *.nii *.nii.gz);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open a case or a head</source>
        <translation>Fall oder Kopf öffnen</translation>
    </message>
    <message>
        <source>Open a head</source>
        <translation>Kopf öffnen</translation>
    </message>
    <message>
        <source>Save the case</source>
        <translation>Fall speichern</translation>
    </message>
    <message>
        <source>The other version could not be put beside it, so nothing was saved; save under another name.</source>
        <translation>Die andere Fassung ließ sich nicht daneben ablegen, daher wurde nichts gespeichert; unter anderem Namen speichern.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CheckStep</name>
    <message>
        <source>Check</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>Find today&apos;s two marks on the cap or the skin. Click each on the head here, or type two or more tape distances to it.</source>
        <translation>Die beiden heutigen Marken auf Kappe oder Haut suchen. Jede hier am Kopf anklicken oder zwei oder mehr Bandabstände zu ihr eintippen.</translation>
    </message>
    <message>
        <source>Site mark</source>
        <translation>Ortsmarke</translation>
    </message>
    <message>
        <source>Edge mark</source>
        <translation>Kantenmarke</translation>
    </message>
    <message>
        <source>Allowed distance from the site</source>
        <translation>Gut bis, Abstand vom Ort</translation>
    </message>
    <message>
        <source>Allowed angle error</source>
        <translation>Gut bis, Winkel</translation>
    </message>
    <message>
        <source>Start the check over</source>
        <translation>Prüfung neu beginnen</translation>
    </message>
    <message>
        <source>Click it</source>
        <translation>Anklicken</translation>
    </message>
    <message>
        <source>Then click the mark on the head</source>
        <translation>Dann die Marke am Kopf anklicken</translation>
    </message>
    <message>
        <source>%1: click it on the head</source>
        <translation>%1: am Kopf anklicken</translation>
    </message>
    <message>
        <source>By tape</source>
        <translation>Per Band</translation>
    </message>
    <message>
        <source>%1: enter tape distances</source>
        <translation>%1: Bandabstände eingeben</translation>
    </message>
    <message>
        <source>from the vertex</source>
        <translation>vom Vertex</translation>
    </message>
    <message>
        <source>from the nasion</source>
        <translation>vom Nasion</translation>
    </message>
    <message>
        <source>from the left tragus</source>
        <translation>vom linken Tragus</translation>
    </message>
    <message>
        <source>from the right tragus</source>
        <translation>vom rechten Tragus</translation>
    </message>
    <message>
        <source>Click anew</source>
        <translation>Neu klicken</translation>
    </message>
    <message>
        <source>Now click today&apos;s site mark on the head.</source>
        <translation>Jetzt die heutige Ortsmarke am Kopf anklicken.</translation>
    </message>
    <message>
        <source>Now click today&apos;s edge mark on the head.</source>
        <translation>Jetzt die heutige Kantenmarke am Kopf anklicken.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>today&apos;s site mark</source>
        <translation>heutige Ortsmarke</translation>
    </message>
    <message>
        <source>today&apos;s edge mark</source>
        <translation>heutige Kantenmarke</translation>
    </message>
    <message>
        <source>As good as tape and pencil get on this head: 95 of 100 pairs of marks made by careful hands lie within.</source>
        <translation>So gut, wie es mit Band und Stift an diesem Kopf geht: 95 von 100 Markenpaaren sorgfältiger Hände liegen darin.</translation>
    </message>
    <message>
        <source>These two are common practice; they have no source.</source>
        <translation>Diese beiden sind übliche Praxis; sie haben keine Quelle.</translation>
    </message>
    <message>
        <source>Your own limits.</source>
        <translation>Eigene Grenzen.</translation>
    </message>
    <message>
        <source>The strict limits</source>
        <translation>Die strengen Grenzen</translation>
    </message>
    <message>
        <source>What tape and pencil can do</source>
        <translation>Was Band und Stift können</translation>
    </message>
    <message>
        <source>Back to those of common practice</source>
        <translation>Zurück zu denen der üblichen Praxis</translation>
    </message>
    <message>
        <source>Sets the limits that careful hands meet on this head</source>
        <translation>Setzt die Grenzen, die sorgfältige Hände an diesem Kopf einhalten</translation>
    </message>
    <message>
        <source>The marks were drawn anew today</source>
        <translation>Marken heute neu gezeichnet</translation>
    </message>
    <message>
        <source>From this visit on they are the reference</source>
        <translation>Ab dieser Sitzung gelten sie als Bezug</translation>
    </message>
    <message>
        <source>Adds the tapes to both marks, and the brim&apos;s heights, to today&apos;s visit of the case</source>
        <translation>Fügt die Bänder zu beiden Marken und die Höhen des Kappenrands der heutigen Sitzung des Falls hinzu</translation>
    </message>
    <message>
        <source>The visit is kept once the tapes to the marks are worked out.</source>
        <translation>Die Sitzung wird festgehalten, sobald die Bänder zu den Marken berechnet sind.</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Sitzung</translation>
    </message>
    <message>
        <source>Enter as today&apos;s visit</source>
        <translation>Als heutige Sitzung eintragen</translation>
    </message>
    <message>
        <source>Entered as visit %1; see Course.</source>
        <translation>Als Sitzung %1 eingetragen; siehe Verlauf.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Choice</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::ClassPanel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>The class by step</source>
        <translation>Die Klasse Schritt für Schritt</translation>
    </message>
    <message>
        <source>Class page…</source>
        <translation>Klassenseite…</translation>
    </message>
    <message>
        <source>Save the class as one page of PDF</source>
        <translation>Die Klasse als eine Seite PDF speichern</translation>
    </message>
    <message>
        <source>Table…</source>
        <translation>Tabelle…</translation>
    </message>
    <message>
        <source>Save every step of every trainee as a table (CSV)</source>
        <translation>Jeden Schritt aller Übenden als Tabelle (CSV) speichern</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Back to choosing an exercise</source>
        <translation>Zurück zur Wahl einer Übung</translation>
    </message>
    <message>
        <source>%1 results</source>
        <translation>%1 Ergebnisse</translation>
    </message>
    <message>
        <source>Pulse off by %1 in the middle of the class; half of it from %2 to %3.</source>
        <translation>In der Mitte der Klasse liegt der Impuls %1 daneben; bei der Hälfte %2 bis %3.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Getan von</translation>
    </message>
    <message>
        <source>Own, %1</source>
        <translation>Eigen, %1</translation>
    </message>
    <message>
        <source>Half of the class</source>
        <translation>Hälfte der Klasse</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CoilOnStage</name>
    <message>
        <source>Coil laid down</source>
        <translation>Spule angelegt</translation>
    </message>
    <message>
        <source>Coil laid on a spot</source>
        <translation>Spule an einem Rasterpunkt angelegt</translation>
    </message>
    <message>
        <source>Coil moved</source>
        <translation>Spule verschoben</translation>
    </message>
    <message>
        <source>Coil turned</source>
        <translation>Spule gedreht</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CourseChart</name>
    <message>
        <source>Distance from the site by visit</source>
        <translation>Abstand vom Ort je Sitzung</translation>
    </message>
    <message>
        <source>Angle off by visit</source>
        <translation>Winkelabweichung je Sitzung</translation>
    </message>
    <message>
        <source>Angle off, degrees</source>
        <translation>Winkelabweichung, Grad</translation>
    </message>
    <message>
        <source>visit</source>
        <translation>Sitzung</translation>
    </message>
    <message>
        <source>Pulse from the site, %1</source>
        <translation>Impuls vom Ort, %1</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::CoursePanel</name>
    <message>
        <source>What the visits show</source>
        <translation>Was die Sitzungen zeigen</translation>
    </message>
    <message>
        <source>Finding the marks of all visits…</source>
        <translation>Marken aller Sitzungen werden gesucht…</translation>
    </message>
    <message>
        <source>Marked anew at visit %1; from there on the new marks are the reference.</source>
        <translation>In Sitzung %1 neu markiert; von da an sind die neuen Marken der Bezug.</translation>
    </message>
    <message>
        <source>Training and illustration only.</source>
        <translation>Nur zur Schulung und Veranschaulichung.</translation>
    </message>
    <message>
        <source>This case has no visits yet. Pulses begin one, and so does Check, with today&apos;s marks.</source>
        <translation>Dieser Fall hat noch keine Sitzungen. Impulse beginnen eine, und ebenso Prüfen mit den heutigen Marken.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::ExplainPanel</name>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Back to the worksheet (Esc)</source>
        <translation>Zurück zum Arbeitsblatt (Esc)</translation>
    </message>
    <message>
        <source>A drawing of a head, shaped by a tape measure</source>
        <translation>Die Zeichnung eines Kopfes, nach dem Maßband geformt</translation>
    </message>
    <message>
        <source>A picture of a head, made from a scan</source>
        <translation>Das Bild eines Kopfes, aus einem Scan erstellt</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>The screen before</source>
        <translation>Die Seite davor</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>The next screen</source>
        <translation>Die nächste Seite</translation>
    </message>
    <message>
        <source>Picture…</source>
        <translation>Bild…</translation>
    </message>
    <message>
        <source>Saves what the stage shows</source>
        <translation>Speichert, was die 3D-Ansicht zeigt</translation>
    </message>
    <message>
        <source>Handout…</source>
        <translation>Merkblatt…</translation>
    </message>
    <message>
        <source>Saves one page to take home, in these words</source>
        <translation>Speichert eine Seite zum Mitnehmen, mit diesen Worten</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Prints that page</source>
        <translation>Druckt diese Seite</translation>
    </message>
    <message>
        <source>Page…</source>
        <translation>Seite…</translation>
    </message>
    <message>
        <source>Saves a page for a browser: the head to turn, in these words</source>
        <translation>Speichert eine Seite für den Browser: der Kopf zum Drehen, in diesen Worten</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Foot</name>
    <message>
        <source>The plan is as it was; only the coil goes back (Esc)</source>
        <translation>Der Plan ist, wie er war; nur die Spule geht zurück (Esc)</translation>
    </message>
    <message>
        <source>Where the coil is</source>
        <translation>Wo die Spule ist</translation>
    </message>
    <message>
        <source>Back to the start</source>
        <translation>Zurück zum Start</translation>
    </message>
    <message>
        <source>Back to the site</source>
        <translation>Zurück zum Ort</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::GapPanel</name>
    <message>
        <source>the scalp</source>
        <translation>die Kopfhaut</translation>
    </message>
    <message>
        <source>the left ear</source>
        <translation>das linke Ohr</translation>
    </message>
    <message>
        <source>the right ear</source>
        <translation>das rechte Ohr</translation>
    </message>
    <message>
        <source>the brow or face</source>
        <translation>Stirn oder Gesicht</translation>
    </message>
    <message>
        <source>Touches %1.</source>
        <translation>Berührung %1.</translation>
    </message>
    <message>
        <source>Left wing</source>
        <translation>Linker Flügel</translation>
    </message>
    <message>
        <source>Right wing</source>
        <translation>Rechter Flügel</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Spalt</translation>
    </message>
    <message>
        <source>, %1 under its middle</source>
        <translation>, %1 unter der Mitte</translation>
    </message>
    <message>
        <source>Clear of ears and brow.</source>
        <translation>Frei von Ohren und Stirn.</translation>
    </message>
    <message>
        <source>Hits %1.</source>
        <translation>Stößt an %1.</translation>
    </message>
    <message>
        <source>Gap under the coil</source>
        <translation>Spalt unter der Spule</translation>
    </message>
    <message>
        <source>Colours the skin under the coil by the gap, where the coil lies or is held (Ctrl+G)</source>
        <translation>Färbt die Haut unter der Spule nach dem Spalt, wo die Spule liegt oder gehalten wird (Strg+G)</translation>
    </message>
    <message>
        <source>How the coil rests</source>
        <translation>Wie die Spule aufliegt</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>Rests on its wings, centre %1 clear.</source>
        <translation>Liegt auf den Flügeln auf, Mitte %1 frei.</translation>
    </message>
    <message>
        <source>Centre %1 clear.</source>
        <translation>Mitte %1 frei.</translation>
    </message>
    <message>
        <source>%1 %2 to %3%4.</source>
        <comment>a wing, its smallest and largest gap, and its middle&apos;s</comment>
        <translation>%1 %2 bis %3%4.</translation>
    </message>
    <message>
        <source>Rests on cap and hair (%2 thick) %1.</source>
        <translation>Liegt auf Kappe und Haar auf (%2 dick) %1.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::HeadExtras</name>
    <message>
        <source>Working out tape distances</source>
        <translation>Bandabstände werden berechnet</translation>
    </message>
    <message>
        <source>Laying the brain under the skin</source>
        <translation>Gehirn wird unter die Haut gelegt</translation>
    </message>
    <message>
        <source>Laying tapes over the whole head</source>
        <translation>Bänder werden über den ganzen Kopf gelegt</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::HeadJob</name>
    <message>
        <source>Working out tape distances</source>
        <translation>Bandabstände werden berechnet</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Laying the tapes</source>
        <translation>Bänder werden angelegt</translation>
    </message>
    <message>
        <source>Laying the coil</source>
        <translation>Spule wird angelegt</translation>
    </message>
    <message>
        <source>Getting the head ready to be turned</source>
        <translation>Kopf wird zum Drehen vorbereitet</translation>
    </message>
    <message>
        <source>Laying tapes over the whole head</source>
        <translation>Bänder werden über den ganzen Kopf gelegt</translation>
    </message>
    <message>
        <source>Laying the brain under the skin</source>
        <translation>Gehirn wird unter die Haut gelegt</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::LandmarksStep</name>
    <message>
        <source>Click the nasion: the hollow where nose meets forehead.</source>
        <translation>Das Nasion anklicken: die Mulde, wo die Nase auf die Stirn trifft.</translation>
    </message>
    <message>
        <source>Click the inion: the bony bump at the back, above the neck.</source>
        <translation>Das Inion anklicken: der Knochenhöcker am Hinterkopf, über dem Nacken.</translation>
    </message>
    <message>
        <source>Click the patient&apos;s left tragus: just in front of the left ear canal.</source>
        <translation>Den linken Tragus des Patienten anklicken: direkt vor dem linken Gehörgang.</translation>
    </message>
    <message>
        <source>Click the patient&apos;s right tragus: just in front of the right ear canal.</source>
        <translation>Den rechten Tragus des Patienten anklicken: direkt vor dem rechten Gehörgang.</translation>
    </message>
    <message>
        <source>Landmarks</source>
        <translation>Landmarken</translation>
    </message>
    <message>
        <source>Shown on the head</source>
        <translation>Am Kopf gezeigt</translation>
    </message>
    <message>
        <source>10-20</source>
        <translation>10-20</translation>
    </message>
    <message>
        <source>The 21 positions of the 10-20 system</source>
        <translation>Die 21 Positionen des 10-20-Systems</translation>
    </message>
    <message>
        <source>10-10</source>
        <translation>10-10</translation>
    </message>
    <message>
        <source>The positions of the 10-10 system</source>
        <translation>Die Positionen des 10-10-Systems</translation>
    </message>
    <message>
        <source>10-5</source>
        <translation>10-5</translation>
    </message>
    <message>
        <source>All 345 positions of the 10-5 system</source>
        <translation>Alle 345 Positionen des 10-5-Systems</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Finden</translation>
    </message>
    <message>
        <source>a label, such as F3</source>
        <translation>ein Kürzel, etwa F3</translation>
    </message>
    <message>
        <source>Find a landmark by its label</source>
        <translation>Eine Landmarke nach ihrem Kürzel finden</translation>
    </message>
    <message>
        <source>Place nasion, inion and tragi anew…</source>
        <translation>Nasion, Inion und Tragi neu setzen…</translation>
    </message>
    <message>
        <source>Use these four points</source>
        <translation>Diese vier Punkte verwenden</translation>
    </message>
    <message>
        <source>Turn upside down</source>
        <translation>Andersherum</translation>
    </message>
    <message>
        <source>Files do not say which way is up; press until the head stands upright and faces you.</source>
        <translation>Dateien sagen nicht, wo oben ist; drücken, bis der Kopf aufrecht steht und nach vorn blickt.</translation>
    </message>
    <message>
        <source>Discard this head</source>
        <translation>Kopf verwerfen</translation>
    </message>
    <message>
        <source>There is no landmark “%1” in the 10-5 system; type a label such as F3 or CPz.</source>
        <translation>Im 10-5-System gibt es keine Landmarke „%1“; ein Kürzel wie F3 oder CPz eintippen.</translation>
    </message>
    <message>
        <source>%1, placed</source>
        <translation>%1, gesetzt</translation>
    </message>
    <message>
        <source>%1, not placed</source>
        <translation>%1, nicht gesetzt</translation>
    </message>
    <message>
        <source>All four are placed. Drag one to move it, or use them.</source>
        <translation>Alle vier sind gesetzt. Einen ziehen, um ihn zu verschieben, oder sie verwenden.</translation>
    </message>
    <message>
        <source>Turn the head by dragging beside it; drag a placed point to move it.</source>
        <translation>Den Kopf drehen: daneben ziehen; einen gesetzten Punkt ziehen, um ihn zu verschieben.</translation>
    </message>
    <message>
        <source>Pencil a short line half way along each long tape; where the two lines cross is the vertex, Cz.</source>
        <translation>Auf halber Länge jedes langen Bandes mit dem Stift einen kurzen Strich ziehen; wo sich die beiden Striche kreuzen, liegt der Vertex, Cz.</translation>
    </message>
    <message>
        <source>A label of the 10-5 system, such as F3; Enter marks it on the stage</source>
        <translation>Ein Kürzel des 10-5-Systems, etwa F3; Eingabe markiert es in der 3D-Ansicht</translation>
    </message>
    <message>
        <source>This one is right</source>
        <translation>Dieser stimmt</translation>
    </message>
    <message>
        <source>Confirms the computer&apos;s guess; or drag the point where it belongs</source>
        <translation>Bestätigt die Schätzung des Rechners; oder den Punkt dorthin ziehen, wo er hingehört</translation>
    </message>
    <message>
        <source>Guess the four points</source>
        <translation>Die vier Punkte schätzen</translation>
    </message>
    <message>
        <source>Fits the built-in head to this skin; each of the four is then to be confirmed or moved</source>
        <translation>Passt den mitgelieferten Kopf in diese Haut ein; jeder der vier ist danach zu bestätigen oder zu verschieben</translation>
    </message>
    <message>
        <source>%1 is marked on the stage.</source>
        <translation>%1 ist in der 3D-Ansicht markiert.</translation>
    </message>
    <message>
        <source>%1 is the older label of %2, marked on the stage.</source>
        <translation>%1 ist das ältere Kürzel von %2, in der 3D-Ansicht markiert.</translation>
    </message>
    <message>
        <source>By tape: %1 from the vertex, %2 from the nasion, %3 from the left tragus, %4 from the right.</source>
        <translation>Mit dem Band: %1 vom Vertex, %2 vom Nasion, %3 vom Tragus links, %4 vom Tragus rechts.</translation>
    </message>
    <message>
        <source>Guessing…</source>
        <translation>Wird geschätzt…</translation>
    </message>
    <message>
        <source>%1, guessed</source>
        <translation>%1, geschätzt</translation>
    </message>
    <message>
        <source>A computer&apos;s guess. Look at it: is it right? Else drag it where it belongs. %1</source>
        <translation>Eine Schätzung des Rechners. Genau ansehen: Stimmt sie? Sonst dorthin ziehen, wo der Punkt hingehört. %1</translation>
    </message>
    <message>
        <source>Pencil a short line half way along each long tape, at %1 of nasion to inion and at %2 of tragus to tragus; where the two lines cross is the vertex, Cz.</source>
        <translation>Auf halber Länge jedes langen Bandes mit dem Stift einen kurzen Strich ziehen, bei %1 von Nasion bis Inion und bei %2 von Tragus bis Tragus; wo sich die beiden Striche kreuzen, liegt der Vertex, Cz.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::LengthField</name>
    <message>
        <source>From %1 to %2 %3.</source>
        <translation>Von %1 bis %2 %3.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::LessonBar</name>
    <message>
        <source>Previous</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Previous step</source>
        <translation>Voriger Schritt</translation>
    </message>
    <message>
        <source>Previous step (Page Up)</source>
        <translation>Voriger Schritt (Bild auf)</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Play the lesson</source>
        <translation>Lektion abspielen</translation>
    </message>
    <message>
        <source>Play or pause (Space)</source>
        <translation>Abspielen oder anhalten (Leertaste)</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Nächster Schritt</translation>
    </message>
    <message>
        <source>Next step (Page Down)</source>
        <translation>Nächster Schritt (Bild ab)</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Play again</source>
        <translation>Noch einmal</translation>
    </message>
    <message>
        <source>Pause the lesson</source>
        <translation>Lektion anhalten</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::LessonPanel</name>
    <message>
        <source>Lesson</source>
        <translation>Lektion</translation>
    </message>
    <message>
        <source>Steps of the lesson</source>
        <translation>Schritte der Lektion</translation>
    </message>
    <message>
        <source>Page Down and Page Up go to the next and the previous step, Space plays.</source>
        <translation>Bild ab und Bild auf führen zum nächsten und zum vorigen Schritt, die Leertaste spielt ab.</translation>
    </message>
    <message>
        <source>Step %1, %2</source>
        <translation>Schritt %1, %2</translation>
    </message>
    <message>
        <source>What if something goes wrong?</source>
        <translation>Was, wenn etwas misslingt?</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::LessonTools</name>
    <message>
        <source>Why?</source>
        <translation>Warum?</translation>
    </message>
    <message>
        <source>Says at each step why it is done so</source>
        <translation>Sagt bei jedem Schritt, warum er so getan wird</translation>
    </message>
    <message>
        <source>How fast the lesson plays</source>
        <translation>Wie schnell die Lektion abläuft</translation>
    </message>
    <message>
        <source>Plays slowly</source>
        <translation>Läuft langsam ab</translation>
    </message>
    <message>
        <source>Plays at reading pace</source>
        <translation>Läuft im Lesetempo ab</translation>
    </message>
    <message>
        <source>Plays quickly</source>
        <translation>Läuft schnell ab</translation>
    </message>
    <message>
        <source>Show it on the right</source>
        <translation>Rechts zeigen</translation>
    </message>
    <message>
        <source>Show it on the left</source>
        <translation>Links zeigen</translation>
    </message>
    <message>
        <source>Moves the case to the other side, as in the search; undo takes it back</source>
        <translation>Legt den Fall auf die andere Seite, wie in der Suche; Rückgängig nimmt es zurück</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::MainWindow</name>
    <message>
        <source>Unnamed case</source>
        <translation>Unbenannter Fall</translation>
    </message>
    <message>
        <source>%1[*] - Scalpmark</source>
        <translation>%1[*] - Scalpmark</translation>
    </message>
    <message>
        <source>Say first whose head this is: the tapes of the case do not fit it.</source>
        <translation>Zuerst angeben, wessen Kopf das ist: Die Maße des Falls passen nicht dazu.</translation>
    </message>
    <message>
        <source>1 head was kept and is forgotten; its file opens more slowly once.</source>
        <translation>1 Kopf war behalten und ist vergessen; seine Datei öffnet sich einmal langsamer.</translation>
    </message>
    <message>
        <source>%1 heads were kept and are forgotten; their files open more slowly once.</source>
        <translation>%1 Köpfe waren behalten und sind vergessen; ihre Dateien öffnen sich einmal langsamer.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::MeasureStep</name>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Tape from nasion over the top to inion, from tragus over the top to tragus, and around the head above the brows. Write the three lengths down.</source>
        <translation>Mit dem Maßband vom Nasion über den Scheitel zum Inion, von Tragus zu Tragus über den Scheitel und um den Kopf oberhalb der Brauen messen. Die drei Längen aufschreiben.</translation>
    </message>
    <message>
        <source>Open a scan or MRI…</source>
        <translation>Scan oder MRT öffnen…</translation>
    </message>
    <message>
        <source>A head surface (OBJ, PLY, STL, glTF, GLB) or an MRI volume (.nii, .nii.gz)</source>
        <translation>Eine Kopfoberfläche (OBJ, PLY, STL, glTF, GLB) oder ein MRT-Volumen (.nii, .nii.gz)</translation>
    </message>
    <message>
        <source>Use the generic head</source>
        <translation>Standardkopf verwenden</translation>
    </message>
    <message>
        <source>Nasion to inion</source>
        <translation>Nasion bis Inion</translation>
    </message>
    <message>
        <source>Tragus to tragus</source>
        <translation>Tragus bis Tragus</translation>
    </message>
    <message>
        <source>Around the head</source>
        <translation>Um den Kopf</translation>
    </message>
    <message>
        <source>Work out tape distances</source>
        <translation>Bandabstände berechnen</translation>
    </message>
    <message>
        <source>They were left out when loading this head was cancelled.</source>
        <translation>Sie wurden weggelassen, als das Laden dieses Kopfes abgebrochen wurde.</translation>
    </message>
    <message>
        <source>Generic head</source>
        <translation>Standardkopf</translation>
    </message>
    <message>
        <source>Head: %1</source>
        <translation>Kopf: %1</translation>
    </message>
    <message>
        <source>The head on the stage: %1, %2, %3 %4.</source>
        <translation>Der Kopf in der 3D-Ansicht: %1, %2, %3 %4.</translation>
    </message>
    <message>
        <source>%1 | %2 | %3 %4</source>
        <translation>%1 | %2 | %3 %4</translation>
    </message>
    <message>
        <source>%1: %2 measured, but %3 on this head.</source>
        <translation>%1: %2 gemessen, aber %3 an diesem Kopf.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Cap&apos;s brim over the nasion</source>
        <translation>Rand der Kappe über dem Nasion</translation>
    </message>
    <message>
        <source>Cap</source>
        <translation>Kappe</translation>
    </message>
    <message>
        <source>With the cap on, its arrow down the nose, check by tape toward the vertex: %1</source>
        <translation>Bei aufgesetzter Kappe, ihr Pfeil die Nase hinab, mit dem Band zum Vertex hin prüfen: %1</translation>
    </message>
    <message>
        <source>No tape of this person yet. The built-in head on the stage, nobody&apos;s own, measures %1, %2, %3 %4.</source>
        <translation>Noch keine Maße dieser Person. Der mitgelieferte Kopf in der 3D-Ansicht, nicht der einer wirklichen Person, misst %1, %2, %3 %4.</translation>
    </message>
    <message>
        <source>no tapes yet</source>
        <translation>noch keine Maße</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Menus</name>
    <message>
        <source>From the front</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>From the patient&apos;s left</source>
        <translation>Von der linken Patientenseite</translation>
    </message>
    <message>
        <source>From the patient&apos;s right</source>
        <translation>Von der rechten Patientenseite</translation>
    </message>
    <message>
        <source>From the back</source>
        <translation>Von hinten</translation>
    </message>
    <message>
        <source>From above</source>
        <translation>Von oben</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>Da&amp;tei</translation>
    </message>
    <message>
        <source>&amp;New case</source>
        <translation>&amp;Neuer Fall</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Save a &amp;picture…</source>
        <translation>B&amp;ild speichern…</translation>
    </message>
    <message>
        <source>Save a s&amp;heet…</source>
        <translation>Bl&amp;att speichern…</translation>
    </message>
    <message>
        <source>P&amp;rint the sheet…</source>
        <translation>Blatt &amp;drucken…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>Bea&amp;rbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Copy picture</source>
        <translation>Bild &amp;kopieren</translation>
    </message>
    <message>
        <source>Lay the coil &amp;on</source>
        <translation>Spule anlegen &amp;am</translation>
    </message>
    <message>
        <source>the treatment site</source>
        <translation>Behandlungsort</translation>
    </message>
    <message>
        <source>the hotspot</source>
        <translation>Hotspot</translation>
    </message>
    <message>
        <source>the search start</source>
        <translation>Suchstart</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Haut</translation>
    </message>
    <message>
        <source>Skin opacity in percent</source>
        <translation>Deckkraft der Haut in Prozent</translation>
    </message>
    <message>
        <source>&amp;Brain under the skin</source>
        <translation>&amp;Gehirn unter der Haut</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>Ans&amp;icht</translation>
    </message>
    <message>
        <source>&amp;Legend</source>
        <translation>&amp;Legende</translation>
    </message>
    <message>
        <source>&amp;Numbers on the stage</source>
        <translation>&amp;Zahlen in der 3D-Ansicht</translation>
    </message>
    <message>
        <source>&amp;Gap under the coil</source>
        <translation>&amp;Spalt unter der Spule</translation>
    </message>
    <message>
        <source>Glid&amp;e between views</source>
        <translation>Blick&amp;wechsel gleitend</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>Cautions and &amp;about</source>
        <translation>Warnhinweise und &amp;Info</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>Straight down on the coil</source>
        <translation>Senkrecht auf die Spule</translation>
    </message>
    <message>
        <source>&amp;Lock the plan</source>
        <translation>Plan &amp;sperren</translation>
    </message>
    <message>
        <source>&amp;Induced field (round model head)</source>
        <translation>&amp;Induziertes Feld (runder Modellkopf)</translation>
    </message>
    <message>
        <source>&amp;Case&apos;s label in Explain</source>
        <translation>&amp;Bezeichnung des Falls in „Erklären“</translation>
    </message>
    <message>
        <source>&amp;Usual</source>
        <translation>&amp;Üblich</translation>
    </message>
    <message>
        <source>&amp;Large</source>
        <translation>&amp;Groß</translation>
    </message>
    <message>
        <source>Lar&amp;gest</source>
        <translation>&amp;Sehr groß</translation>
    </message>
    <message>
        <source>Pro&amp;jected: Teach and Check for a whole room</source>
        <translation>Pro&amp;jiziert: „Lehren“ und „Prüfen“ für einen ganzen Raum</translation>
    </message>
    <message>
        <source>Re&amp;cent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Lengths in inc&amp;hes</source>
        <translation>Längen in Z&amp;oll</translation>
    </message>
    <message>
        <source>&amp;Dark, except the stage</source>
        <translation>&amp;Dunkel, außer der 3D-Ansicht</translation>
    </message>
    <message>
        <source>Text si&amp;ze</source>
        <translation>Te&amp;xtgröße</translation>
    </message>
    <message>
        <source>&amp;Export the head…</source>
        <translation>Kopf &amp;exportieren…</translation>
    </message>
    <message>
        <source>Save a pa&amp;ge for a browser…</source>
        <translation>Seite für den Bro&amp;wser speichern…</translation>
    </message>
    <message>
        <source>&amp;Forget heads kept to open quickly</source>
        <translation>Zum schnellen Öffnen behaltene Köpfe &amp;vergessen</translation>
    </message>
    <message>
        <source>Save s&amp;trips of paper…</source>
        <translation>Papierst&amp;reifen speichern…</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::NextMark</name>
    <message>
        <source>Previous</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>%1, from %2</source>
        <comment>a mark, and where the tape begins</comment>
        <translation>%1, ab %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>The numbers of the marks, one at a time</source>
        <translation>Die Zahlen der Marken, eine nach der anderen</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::NoticeBar</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close this message</source>
        <translation>Diese Meldung schließen</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::NumberField</name>
    <message>
        <source>%1, in %2</source>
        <translation>%1, in %2</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Output</name>
    <message>
        <source>No printer is set up on this computer; save the sheet as a PDF and print that elsewhere.</source>
        <translation>Auf diesem Rechner ist kein Drucker eingerichtet; das Blatt als PDF speichern und anderswo drucken.</translation>
    </message>
    <message>
        <source>Placement sheet</source>
        <translation>Platzierungsblatt</translation>
    </message>
    <message>
        <source>Print the sheet</source>
        <translation>Blatt drucken</translation>
    </message>
    <message>
        <source>A sheet or picture is still being written; wait until it is done.</source>
        <translation>Ein Blatt oder Bild wird noch geschrieben; warten, bis es fertig ist.</translation>
    </message>
    <message>
        <source>Sheet on A4 (*.pdf)</source>
        <translation>Blatt auf A4 (*.pdf)</translation>
    </message>
    <message>
        <source>Sheet on Letter (*.pdf)</source>
        <translation>Blatt auf Letter (*.pdf)</translation>
    </message>
    <message>
        <source>Save a sheet</source>
        <translation>Blatt speichern</translation>
    </message>
    <message>
        <source>The sheet is saved in %1.</source>
        <translation>Das Blatt ist in %1 gespeichert.</translation>
    </message>
    <message>
        <source>The sheet is on its way to the printer.</source>
        <translation>Das Blatt ist unterwegs zum Drucker.</translation>
    </message>
    <message>
        <source>Save a picture</source>
        <translation>Bild speichern</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Bilder (*.png)</translation>
    </message>
    <message>
        <source>The picture is saved in %1.</source>
        <translation>Das Bild ist in %1 gespeichert.</translation>
    </message>
    <message>
        <source>Save the handout</source>
        <translation>Merkblatt speichern</translation>
    </message>
    <message>
        <source>Handout (*.pdf)</source>
        <translation>Merkblatt (*.pdf)</translation>
    </message>
    <message>
        <source>The handout is saved in %1.</source>
        <translation>Das Merkblatt ist in %1 gespeichert.</translation>
    </message>
    <message>
        <source>The handout is on its way to the printer.</source>
        <translation>Das Merkblatt ist unterwegs zum Drucker.</translation>
    </message>
    <message>
        <source>Save a page for a browser</source>
        <translation>Seite für den Browser speichern</translation>
    </message>
    <message>
        <source>Pages (*.html)</source>
        <translation>Seiten (*.html)</translation>
    </message>
    <message>
        <source>The page is saved in %1.</source>
        <translation>Die Seite ist in %1 gespeichert.</translation>
    </message>
    <message>
        <source>For other viewers (*.glb)</source>
        <translation>Für andere Betrachter (*.glb)</translation>
    </message>
    <message>
        <source>Mesh with colours (*.ply)</source>
        <translation>Netz mit Farben (*.ply)</translation>
    </message>
    <message>
        <source>For a 3D printer (*.stl)</source>
        <translation>3D-Druck (*.stl)</translation>
    </message>
    <message>
        <source>For a 3D printer, cut flat above the brow (*.stl)</source>
        <translation>3D-Druck, über der Braue flach (*.stl)</translation>
    </message>
    <message>
        <source>Export the head</source>
        <translation>Kopf exportieren</translation>
    </message>
    <message>
        <source>The head is saved in %1.</source>
        <translation>Der Kopf ist in %1 gespeichert.</translation>
    </message>
    <message>
        <source>Strips on A4 (*.pdf)</source>
        <translation>Streifen auf A4 (*.pdf)</translation>
    </message>
    <message>
        <source>Strips on Letter (*.pdf)</source>
        <translation>Streifen auf Letter (*.pdf)</translation>
    </message>
    <message>
        <source>Save strips of paper</source>
        <translation>Papierstreifen speichern</translation>
    </message>
    <message>
        <source>The strips are saved in %1.</source>
        <translation>Die Streifen sind in %1 gespeichert.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::OutputJob</name>
    <message>
        <source>Writing the sheet</source>
        <translation>Blatt wird geschrieben</translation>
    </message>
    <message>
        <source>Making the sheet</source>
        <translation>Blatt wird erstellt</translation>
    </message>
    <message>
        <source>Drawing the sheet&apos;s views</source>
        <translation>Ansichten des Blatts werden gezeichnet</translation>
    </message>
    <message>
        <source>Writing the picture</source>
        <translation>Bild wird geschrieben</translation>
    </message>
    <message>
        <source>Writing the handout</source>
        <translation>Merkblatt wird geschrieben</translation>
    </message>
    <message>
        <source>Making the page</source>
        <translation>Die Seite wird gemacht</translation>
    </message>
    <message>
        <source>Writing the page</source>
        <translation>Die Seite wird geschrieben</translation>
    </message>
    <message>
        <source>Making the head solid</source>
        <translation>Der Kopf wird zum Körper gemacht</translation>
    </message>
    <message>
        <source>Writing the head</source>
        <translation>Der Kopf wird geschrieben</translation>
    </message>
    <message>
        <source>Making the strips</source>
        <translation>Streifen werden erstellt</translation>
    </message>
    <message>
        <source>Writing the strips</source>
        <translation>Streifen werden geschrieben</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PlaceChoice</name>
    <message>
        <source>Nearest to the plan</source>
        <translation>Dem Plan am nächsten</translation>
    </message>
    <message>
        <source>The tapes do not say that the mark is there</source>
        <translation>Die Bänder sagen nicht, dass die Marke dort ist</translation>
    </message>
    <message>
        <source>%1: take the place nearest to the plan</source>
        <translation>%1: die dem Plan nächste Stelle nehmen</translation>
    </message>
    <message>
        <source>%1: place %2</source>
        <translation>%1: Stelle %2</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Placing</name>
    <message>
        <source>nasion</source>
        <translation>Nasion</translation>
    </message>
    <message>
        <source>inion</source>
        <translation>Inion</translation>
    </message>
    <message>
        <source>left tragus</source>
        <translation>Tragus links</translation>
    </message>
    <message>
        <source>right tragus</source>
        <translation>Tragus rechts</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PlainField</name>
    <message>
        <source>From %1 to %2 %3.</source>
        <translation>Von %1 bis %2 %3.</translation>
    </message>
    <message>
        <source>%1: type a number from %2 to %3 %4, such as %5; “%6” cannot be used.</source>
        <translation>%1: eine Zahl von %2 bis %3 %4 eintippen, etwa %5; „%6“ ist nicht brauchbar.</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Practise</name>
    <message>
        <source>Practise</source>
        <translation>Üben</translation>
    </message>
    <message>
        <source>Scoring the class</source>
        <translation>Die Klasse wird ausgewertet</translation>
    </message>
    <message>
        <source>Exercises (*.json)</source>
        <translation>Übungen (*.json)</translation>
    </message>
    <message>
        <source>Results (*.json)</source>
        <translation>Ergebnisse (*.json)</translation>
    </message>
    <message>
        <source>Open an exercise</source>
        <translation>Übung öffnen</translation>
    </message>
    <message>
        <source>Save the exercise</source>
        <translation>Übung speichern</translation>
    </message>
    <message>
        <source>exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Open the results of a class</source>
        <translation>Ergebnisse einer Klasse öffnen</translation>
    </message>
    <message>
        <source>Save the result</source>
        <translation>Ergebnis speichern</translation>
    </message>
    <message>
        <source>result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Save the class page</source>
        <translation>Klassenseite speichern</translation>
    </message>
    <message>
        <source>class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>Pages (*.pdf)</source>
        <translation>Seiten (*.pdf)</translation>
    </message>
    <message>
        <source>Save the table</source>
        <translation>Tabelle speichern</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PulseList</name>
    <message>
        <source>spot %1</source>
        <translation>Rasterpunkt %1</translation>
    </message>
    <message>
        <source>site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>%1   %2, %3 %: %4   %5</source>
        <translation>%1   %2, %3 %: %4   %5</translation>
    </message>
    <message>
        <source>%1   corrected, first noted: %2</source>
        <translation>%1   korrigiert, zuerst notiert: %2</translation>
    </message>
    <message>
        <source>Pulses of the visit</source>
        <translation>Impulse der Sitzung</translation>
    </message>
    <message>
        <source>The keys 0 to 3 correct the answer of the chosen pulse</source>
        <translation>Die Tasten 0 bis 3 korrigieren die Antwort des gewählten Impulses</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PulseLog</name>
    <message>
        <source>A case holds at most %1 visits; begin another case.</source>
        <translation>Ein Fall fasst höchstens %1 Sitzungen; einen weiteren Fall beginnen.</translation>
    </message>
    <message>
        <source>A visit holds at most %1 pulses; begin another.</source>
        <translation>Eine Sitzung fasst höchstens %1 Impulse; eine weitere beginnen.</translation>
    </message>
    <message>
        <source>Pulse</source>
        <translation>Impuls</translation>
    </message>
    <message>
        <source>There is no pulse to take back.</source>
        <translation>Es gibt keinen Impuls zum Zurücknehmen.</translation>
    </message>
    <message>
        <source>Pulse taken back</source>
        <translation>Impuls zurückgenommen</translation>
    </message>
    <message>
        <source>Pulse corrected</source>
        <translation>Impuls korrigiert</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PulsePad</name>
    <message>
        <source>Spot %1: %2</source>
        <translation>Rasterpunkt %1: %2</translation>
    </message>
    <message>
        <source>Spot %1: %2, answered %3</source>
        <translation>Rasterpunkt %1: %2, beantwortet %3</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PulsePanel</name>
    <message>
        <source>Pulses</source>
        <translation>Impulse</translation>
    </message>
    <message>
        <source>Keys: 0 none, 1 thumb, 2 index finger, 3 other; up and down the output, with Shift finely; left and right the spot; Backspace takes the last pulse back</source>
        <translation>Tasten: 0 keine, 1 Daumen, 2 Zeigefinger, 3 andere; auf und ab die Leistung, mit Umschalt fein; links und rechts der Rasterpunkt; die Rücktaste nimmt den letzten Impuls zurück</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Spot</source>
        <translation>Rasterpunkt</translation>
    </message>
    <message>
        <source>Output, %</source>
        <translation>Leistung, %</translation>
    </message>
    <message>
        <source>Answer: %1</source>
        <translation>Antwort: %1</translation>
    </message>
    <message>
        <source>No pulse yet.</source>
        <translation>Noch kein Impuls.</translation>
    </message>
    <message>
        <source>Pulse %1: %2 %, %3.</source>
        <translation>Impuls %1: %2 %, %3.</translation>
    </message>
    <message>
        <source>Takes the last pulse back: it was none, or entered by mistake (Backspace)</source>
        <translation>Nimmt den letzten Impuls zurück: Es war keiner, oder er wurde versehentlich eingetragen (Rücktaste)</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::PulsesStep</name>
    <message>
        <source>Pulses</source>
        <translation>Impulse</translation>
    </message>
    <message>
        <source>Lay the coil on the spot, give one pulse, watch the relaxed hand, and note what you saw.</source>
        <translation>Die Spule an den Rasterpunkt anlegen, einen Impuls geben, die entspannte Hand beobachten und notieren, was zu sehen war.</translation>
    </message>
    <message>
        <source>Pulses of this visit, the last on top</source>
        <translation>Impulse dieser Sitzung, der letzte oben</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Sitzung</translation>
    </message>
    <message>
        <source>initials</source>
        <translation>Handzeichen</translation>
    </message>
    <message>
        <source>Initials of who gives the pulses; may stay empty</source>
        <translation>Handzeichen der Person, die die Impulse gibt; darf leer bleiben</translation>
    </message>
    <message>
        <source>Who gives the pulses; may stay empty</source>
        <translation>Wer die Impulse gibt; darf leer bleiben</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Handzeichen</translation>
    </message>
    <message>
        <source>Hotspot</source>
        <translation>Hotspot</translation>
    </message>
    <message>
        <source>New visit</source>
        <translation>Neue Sitzung</translation>
    </message>
    <message>
        <source>Visit %1, %2</source>
        <translation>Sitzung %1, %2</translation>
    </message>
    <message>
        <source>This visit is over: a pulse begins another.</source>
        <translation>Diese Sitzung ist vorbei: Ein Impuls beginnt eine neue.</translation>
    </message>
    <message>
        <source>%1 pulses, threshold %2 %</source>
        <translation>%1 Impulse, Schwelle %2 %</translation>
    </message>
    <message>
        <source>%1 pulses</source>
        <translation>%1 Impulse</translation>
    </message>
    <message>
        <source>Take spot %1 as hotspot</source>
        <translation>Rasterpunkt %1 als Hotspot nehmen</translation>
    </message>
    <message>
        <source>Take the best spot as hotspot</source>
        <translation>Besten Punkt als Hotspot nehmen</translation>
    </message>
    <message>
        <source>Go to the most telling spot</source>
        <translation>Zum aufschlussreichsten Punkt</translation>
    </message>
    <message>
        <source>Take the centre as hotspot</source>
        <translation>Schwerpunkt als Hotspot nehmen</translation>
    </message>
    <message>
        <source>Try next: spot %1</source>
        <translation>Als Nächstes versuchen: Rasterpunkt %1</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::RulesPicture</name>
    <message>
        <source>tape</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>Nahpunkt</translation>
    </message>
    <message>
        <source>The three rules, seen from beside the coil</source>
        <translation>Die drei Regeln, seitlich neben der Spule gesehen</translation>
    </message>
    <message>
        <source>%1: edge %2 above its mark</source>
        <comment>a rule, and how far its mark lies from the edge</comment>
        <translation>%1: Kante %2 über ihrer Marke</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>Spule</translation>
    </message>
    <message>
        <source>pulse</source>
        <translation>Impuls</translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation>Spalt %1</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SaveStep</name>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Write the numbers down on paper too: a cap gets lost, and a tape finds the marks again.</source>
        <translation>Die Zahlen auch auf Papier notieren: Eine Kappe geht verloren, und ein Maßband findet die Marken wieder.</translation>
    </message>
    <message>
        <source>Label of the case</source>
        <translation>Bezeichnung des Falls</translation>
    </message>
    <message>
        <source>Printed on pictures and sheets. No names: use your own code for the person.</source>
        <translation>Wird auf Bilder und Blätter gedruckt. Keine Namen: einen eigenen Code für die Person verwenden.</translation>
    </message>
    <message>
        <source>Save case</source>
        <translation>Fall speichern</translation>
    </message>
    <message>
        <source>Picture…</source>
        <translation>Bild…</translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation>Blatt…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Writes the case into its file, or asks for one (Ctrl+S)</source>
        <translation>Schreibt den Fall in seine Datei oder fragt nach einer (Strg+S)</translation>
    </message>
    <message>
        <source>Saves what the stage shows as a picture (Ctrl+Shift+P)</source>
        <translation>Speichert, was die 3D-Ansicht zeigt, als Bild (Strg+Umschalt+P)</translation>
    </message>
    <message>
        <source>Saves the placement sheet as PDF, A4 or Letter (Ctrl+E)</source>
        <translation>Speichert das Platzierungsblatt als PDF, A4 oder Letter (Strg+E)</translation>
    </message>
    <message>
        <source>Prints the placement sheet (Ctrl+P)</source>
        <translation>Druckt das Platzierungsblatt (Strg+P)</translation>
    </message>
    <message>
        <source>The lengths that find the marks again, one at a time in digits as large as a hand</source>
        <translation>Die Längen, mit denen die Marken wiedergefunden werden, eine nach der anderen in handgroßen Ziffern</translation>
    </message>
    <message>
        <source>A locked plan is not changed by a slip of the hand; saving locks it (Ctrl+L)</source>
        <translation>Ein gesperrter Plan wird nicht aus Versehen geändert; Speichern sperrt ihn (Strg+L)</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Bezeichnung</translation>
    </message>
    <message>
        <source>Not saved yet.</source>
        <translation>Noch nicht gespeichert.</translation>
    </message>
    <message>
        <source>Saved in %1.</source>
        <translation>Gespeichert in %1.</translation>
    </message>
    <message>
        <source>Changed since it was saved in %1.</source>
        <translation>Geändert, seit in %1 gespeichert wurde.</translation>
    </message>
    <message>
        <source>Locked: unlock the plan</source>
        <translation>Gesperrt: Plan entsperren</translation>
    </message>
    <message>
        <source>Lock the plan</source>
        <translation>Plan sperren</translation>
    </message>
    <message>
        <source>saved, locked</source>
        <translation>gespeichert, gesperrt</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
    <message>
        <source>saved</source>
        <translation>gespeichert</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>Show the numbers large</source>
        <translation>Die Zahlen groß zeigen</translation>
    </message>
    <message>
        <source>Export…</source>
        <translation>Exportieren…</translation>
    </message>
    <message>
        <source>Page for a browser…</source>
        <translation>Seite für den Browser…</translation>
    </message>
    <message>
        <source>Saves one file that any browser opens from disk: the head to turn, the coil to move (Ctrl+Shift+W)</source>
        <translation>Speichert eine Datei, die jeder Browser von der Festplatte öffnet: der Kopf zum Drehen, die Spule zum Verschieben (Strg+Umschalt+W)</translation>
    </message>
    <message>
        <source>The head with its marks, for other viewers, or with its marks standing out for a 3D printer (Ctrl+Shift+E)</source>
        <translation>Der Kopf mit seinen Marken, für andere Betrachter, oder mit erhabenen Marken für einen 3D-Drucker (Strg+Umschalt+E)</translation>
    </message>
    <message>
        <source>Strips…</source>
        <translation>Streifen…</translation>
    </message>
    <message>
        <source>Saves strips of paper at true size, marked for this head, in place of a tape that is read (Ctrl+Shift+T)</source>
        <translation>Speichert Papierstreifen in wahrer Größe, für diesen Kopf markiert, anstelle eines abgelesenen Bandmaßes (Strg+Umschalt+T)</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::ScorePanel</name>
    <message>
        <source>Score</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Step by step</source>
        <translation>Schritt für Schritt</translation>
    </message>
    <message>
        <source>Score by step</source>
        <translation>Ergebnis Schritt für Schritt</translation>
    </message>
    <message>
        <source>Previous</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>The step before, on the stage</source>
        <translation>Der Schritt davor, auf der Bühne</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>The next step, on the stage</source>
        <translation>Der nächste Schritt, auf der Bühne</translation>
    </message>
    <message>
        <source>Initials, if you like</source>
        <translation>Kürzel, wenn Sie mögen</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Stand in the result&apos;s file and in the table of the class; without them nobody is named</source>
        <translation>Steht in der Ergebnisdatei und in der Tabelle der Klasse; ohne Kürzel wird niemand genannt</translation>
    </message>
    <message>
        <source>Save the result…</source>
        <translation>Ergebnis speichern…</translation>
    </message>
    <message>
        <source>All tries, for the trainer to put a class together</source>
        <translation>Alle Versuche, damit der Kursleiter eine Klasse zusammenstellen kann</translation>
    </message>
    <message>
        <source>Again, same head</source>
        <translation>Noch einmal, derselbe Kopf</translation>
    </message>
    <message>
        <source>Another try on the same head: is the hand steady?</source>
        <translation>Noch ein Versuch am selben Kopf: Ist die Hand ruhig?</translation>
    </message>
    <message>
        <source>Other exercise</source>
        <translation>Andere Übung</translation>
    </message>
    <message>
        <source>Back to choosing an exercise</source>
        <translation>Zurück zur Wahl einer Übung</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Own, %1</source>
        <translation>Eigen, %1</translation>
    </message>
    <message>
        <source>Carried, %1</source>
        <translation>Übernommen, %1</translation>
    </message>
    <message>
        <source>One&apos;s own error: from where the step should be, given what came before</source>
        <translation>Eigener Fehler: von da, wo der Schritt nach allem Vorigen sein soll</translation>
    </message>
    <message>
        <source>Error carried over: what earlier steps had done to it</source>
        <translation>Übernommener Fehler: was frühere Schritte bewirkt haben</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>nicht getan</translation>
    </message>
    <message>
        <source>pulse at the end</source>
        <translation>Impuls am Ende</translation>
    </message>
    <message>
        <source>Again, same head (%1 left)</source>
        <translation>Noch einmal, derselbe Kopf (noch %1)</translation>
    </message>
    <message>
        <source>Not done.</source>
        <translation>Nicht getan.</translation>
    </message>
    <message>
        <source>Own error: %1</source>
        <translation>Eigener Fehler: %1</translation>
    </message>
    <message>
        <source>Carried over: %1</source>
        <translation>Übernommen: %1</translation>
    </message>
    <message>
        <source>Together: %1</source>
        <translation>Zusammen: %1</translation>
    </message>
    <message>
        <source>Of it misread: %1</source>
        <translation>Davon falsch abgelesen: %1</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SearchStep</name>
    <message>
        <source>Search</source>
        <translation>Suche</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>The patient&apos;s left</source>
        <translation>Linke Patientenseite</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>The patient&apos;s right</source>
        <translation>Rechte Patientenseite</translation>
    </message>
    <message>
        <source>From the vertex toward the ear</source>
        <translation>Vom Vertex zum Ohr</translation>
    </message>
    <message>
        <source>Then forward</source>
        <translation>Dann nach vorn</translation>
    </message>
    <message>
        <source>The grid is drawn on</source>
        <translation>Das Raster liegt auf</translation>
    </message>
    <message>
        <source>edge marks</source>
        <translation>Kantenmarken</translation>
    </message>
    <message>
        <source>What staff draw: the nine marks are evenly spaced</source>
        <translation>Was man zeichnet: Die neun Marken haben gleiche Abstände</translation>
    </message>
    <message>
        <source>pulse points</source>
        <translation>Impulspunkten</translation>
    </message>
    <message>
        <source>The nine pulse points are evenly spaced</source>
        <translation>Die neun Impulspunkte haben gleiche Abstände</translation>
    </message>
    <message>
        <source>Coil</source>
        <translation>Spule</translation>
    </message>
    <message>
        <source>Angle to the midline</source>
        <translation>Winkel zur Mittellinie</translation>
    </message>
    <message>
        <source>Coil angle</source>
        <translation>Winkel der Spule</translation>
    </message>
    <message>
        <source>Centre to front edge</source>
        <translation>Mitte bis Vorderkante</translation>
    </message>
    <message>
        <source>Cap and hair</source>
        <translation>Kappe und Haar</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>A tape of the centre-to-edge length along the skin from the pulse point</source>
        <translation>Ein Band der Länge Mitte bis Kante, vom Impulspunkt auf der Haut</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>Nahpunkt</translation>
    </message>
    <message>
        <source>Lay the coil on</source>
        <translation>Spule anlegen</translation>
    </message>
    <message>
        <source>Grid</source>
        <translation>Raster</translation>
    </message>
    <message>
        <source>From the vertex tape %1 toward the %2 ear, then %3 %4: the start. Pencil a bar along the coil&apos;s front edge at each of the nine spots.</source>
        <translation>Vom Vertex %1 zum Ohr (%2) messen, dann %3 nach %4: der Suchstart. An jedem der neun Rasterpunkte mit dem Stift einen Strich an der Vorderkante der Spule ziehen.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>%1, %2 + %3</source>
        <translation>%1, %2 + %3</translation>
    </message>
    <message>
        <source>Coils to choose from</source>
        <translation>Auswählbare Spulen</translation>
    </message>
    <message>
        <source>The length from its centre to its front edge becomes the coil&apos;s own.</source>
        <translation>Die Länge von der Mitte bis zur Vorderkante wird die der gewählten Spule.</translation>
    </message>
    <message>
        <source>The grid&apos;s edge marks are drawn by</source>
        <translation>Kantenmarken des Rasters gezeichnet nach</translation>
    </message>
    <message>
        <source>Looking straight down past the edge of the coil held there</source>
        <translation>Senkrecht an der Kante der dort gehaltenen Spule vorbei blicken</translation>
    </message>
    <message>
        <source>The skin nearest to the edge of the coil held there</source>
        <translation>Die Stelle der Haut, die der Kante der dort gehaltenen Spule am nächsten ist</translation>
    </message>
    <message>
        <source>The coil is laid over a mark by</source>
        <translation>Spule an einer Marke angelegt nach</translation>
    </message>
    <message>
        <source>A tape run from under the coil&apos;s centre to the mark</source>
        <translation>Ein Band vom Punkt unter der Mitte der Spule bis zur Marke</translation>
    </message>
    <message>
        <source>Looking straight down past the coil&apos;s edge at the mark</source>
        <translation>Senkrecht an der Kante der Spule vorbei auf die Marke blicken</translation>
    </message>
    <message>
        <source>Bringing the coil&apos;s edge as near to the mark as it goes</source>
        <translation>Die Kante der Spule so nah wie möglich an die Marke bringen</translation>
    </message>
    <message>
        <source>Rule for drawing</source>
        <translation>Regel zum Zeichnen</translation>
    </message>
    <message>
        <source>Rule for laying</source>
        <translation>Regel zum Anlegen</translation>
    </message>
    <message>
        <source>Grid step</source>
        <translation>Rasterschritt</translation>
    </message>
    <message>
        <source>Try a spot: lay the coil on</source>
        <translation>Spule an Rasterpunkt anlegen</translation>
    </message>
    <message>
        <source>This spot answered</source>
        <translation>Dieser Rasterpunkt hat geantwortet</translation>
    </message>
    <message>
        <source>Takes the spot that the coil is on as the hotspot, as in the next steps</source>
        <translation>Nimmt den Rasterpunkt, an dem die Spule liegt, als Hotspot, wie in den nächsten Schritten</translation>
    </message>
    <message>
        <source>Hotspot</source>
        <translation>Hotspot</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Session</name>
    <message>
        <source>Loading the head</source>
        <translation>Kopf wird geladen</translation>
    </message>
    <message>
        <source>There is no file %1; choose another.</source>
        <translation>Es gibt keine Datei %1; eine andere wählen.</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>%1 wird gelesen</translation>
    </message>
    <message>
        <source>Place all four points first.</source>
        <translation>Zuerst alle vier Punkte setzen.</translation>
    </message>
    <message>
        <source>Head from %1</source>
        <translation>Kopf aus %1</translation>
    </message>
    <message>
        <source>The plan is locked, since it was saved; unlock it to change it (Ctrl+L, or the button in the last step).</source>
        <translation>Der Plan ist gesperrt, seit er gespeichert wurde; zum Ändern entsperren (Strg+L oder die Schaltfläche im letzten Schritt).</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SetupPanel</name>
    <message>
        <source>Begin</source>
        <translation>Anfangen</translation>
    </message>
    <message>
        <source>Begin the exercise on a fresh head</source>
        <translation>Die Übung an einem frischen Kopf anfangen</translation>
    </message>
    <message>
        <source>Open…</source>
        <translation>Öffnen …</translation>
    </message>
    <message>
        <source>Open an exercise that was saved</source>
        <translation>Eine gespeicherte Übung öffnen</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Speichern …</translation>
    </message>
    <message>
        <source>Save this exercise, for others to open</source>
        <translation>Diese Übung speichern, damit andere sie öffnen können</translation>
    </message>
    <message>
        <source>Class…</source>
        <translation>Klasse…</translation>
    </message>
    <message>
        <source>Put the results of a class together; they can be dropped on the window as well</source>
        <translation>Die Ergebnisse einer Klasse zusammenstellen; sie lassen sich auch auf das Fenster ziehen</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>Whose head</source>
        <translation>Wessen Kopf</translation>
    </message>
    <message>
        <source>Drawn for a number</source>
        <translation>Zu einer Zahl gezogen</translation>
    </message>
    <message>
        <source>An adult&apos;s head drawn by chance; the same number gives a whole class the same head</source>
        <translation>Ein zufällig gezogener Kopf eines Erwachsenen; dieselbe Zahl gibt einer ganzen Klasse denselben Kopf</translation>
    </message>
    <message>
        <source>The case&apos;s own</source>
        <translation>Der Kopf des Falls</translation>
    </message>
    <message>
        <source>The head of the case on the worksheet</source>
        <translation>Der Kopf des Falls auf dem Arbeitsblatt</translation>
    </message>
    <message>
        <source>Number of the head</source>
        <translation>Zahl des Kopfs</translation>
    </message>
    <message>
        <source>From 0 to %1. The same number gives the same head.</source>
        <translation>Von 0 bis %1. Dieselbe Zahl gibt denselben Kopf.</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>The left side is stimulated</source>
        <translation>Die linke Seite wird stimuliert</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>The right side is stimulated</source>
        <translation>Die rechte Seite wird stimuliert</translation>
    </message>
    <message>
        <source>The spot that answers</source>
        <translation>Der Rasterpunkt, der antwortet</translation>
    </message>
    <message>
        <source>Spot that answers</source>
        <translation>Rasterpunkt, der antwortet</translation>
    </message>
    <message>
        <source>Tasks</source>
        <translation>Aufgaben</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>The whole job</source>
        <translation>Die ganze Arbeit</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>To pick a few</source>
        <translation>Um einige auszuwählen</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Minutes for all of it</source>
        <translation>Minuten für alles</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>Minutes for all of it; 0 is no limit, %1 the most</source>
        <translation>Minuten für alles; 0 heißt keine Grenze, höchstens %1</translation>
    </message>
    <message>
        <source>Tries</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>How often it may be done; 0 is no limit, %1 the most</source>
        <translation>Wie oft geübt werden darf; 0 heißt keine Grenze, höchstens %1</translation>
    </message>
    <message>
        <source>Name of the exercise</source>
        <translation>Name der Übung</translation>
    </message>
    <message>
        <source>What the exercise is called in its file and on the class page; may stay empty</source>
        <translation>Wie die Übung in ihrer Datei und auf der Klassenseite heißt; darf leer bleiben</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Drawing the head…</source>
        <translation>Der Kopf wird gezogen…</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SiteStep</name>
    <message>
        <source>Site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>The hotspot is</source>
        <translation>Der Hotspot ist</translation>
    </message>
    <message>
        <source>The treatment site is</source>
        <translation>Der Behandlungsort ist</translation>
    </message>
    <message>
        <source>forward of it</source>
        <translation>vor dem Hotspot</translation>
    </message>
    <message>
        <source>A tape forward from the hotspot, parallel to the midline</source>
        <translation>Ein Band vom Hotspot nach vorn, parallel zur Mittellinie</translation>
    </message>
    <message>
        <source>a landmark</source>
        <translation>eine Landmarke</translation>
    </message>
    <message>
        <source>A position of the 10-20, 10-10 or 10-5 system</source>
        <translation>Eine Position des 10-20-, 10-10- oder 10-5-Systems</translation>
    </message>
    <message>
        <source>Forward from the hotspot</source>
        <translation>Vom Hotspot nach vorn</translation>
    </message>
    <message>
        <source>Treatment distance</source>
        <translation>Behandlungsabstand</translation>
    </message>
    <message>
        <source>Its edge mark is drawn by</source>
        <translation>Kantenmarke gezeichnet nach</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>A tape of the centre-to-edge length along the skin from the site</source>
        <translation>Ein Band der Länge Mitte bis Kante, vom Behandlungsort auf der Haut</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Looking straight down past the edge of the coil on the site</source>
        <translation>Senkrecht an der Kante der Spule am Behandlungsort vorbei blicken</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>Nahpunkt</translation>
    </message>
    <message>
        <source>The skin nearest to the edge of the coil on the site</source>
        <translation>Die Stelle der Haut, die der Kante der Spule am Behandlungsort am nächsten ist</translation>
    </message>
    <message>
        <source>Landmark</source>
        <translation>Landmarke</translation>
    </message>
    <message>
        <source>Landmark of the treatment site</source>
        <translation>Landmarke des Behandlungsorts</translation>
    </message>
    <message>
        <source>A label of the 10-5 system, such as F3</source>
        <translation>Ein Kürzel des 10-5-Systems, etwa F3</translation>
    </message>
    <message>
        <source>Treat on the other side</source>
        <translation>Auf der anderen Seite behandeln</translation>
    </message>
    <message>
        <source>Other sites, and how far they lie from this one</source>
        <translation>Andere Orte und wie weit sie von diesem entfernt sind</translation>
    </message>
    <message>
        <source>Other sites; Enter chooses one</source>
        <translation>Andere Orte; Eingabe wählt einen</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Double-click, or Enter, makes it the treatment site.</source>
        <translation>Doppelklick oder Eingabe macht ihn zum Behandlungsort.</translation>
    </message>
    <message>
        <source>Hotspot</source>
        <translation>Hotspot</translation>
    </message>
    <message>
        <source>Treatment rule</source>
        <translation>Behandlungsregel</translation>
    </message>
    <message>
        <source>Rule for drawing</source>
        <translation>Regel zum Zeichnen</translation>
    </message>
    <message>
        <source>Treatment site</source>
        <translation>Behandlungsort</translation>
    </message>
    <message>
        <source>Type the landmark&apos;s label, such as F3.</source>
        <translation>Das Kürzel der Landmarke eintippen, etwa F3.</translation>
    </message>
    <message>
        <source>There is no landmark “%1” in the 10-5 system; type a label such as F3.</source>
        <translation>Im 10-5-System gibt es keine Landmarke „%1“; ein Kürzel wie F3 eintippen.</translation>
    </message>
    <message>
        <source>%1 lies on the patient&apos;s right, but the search is on the left. For the right side press Enter again; on the left it is %2.</source>
        <translation>%1 liegt auf der rechten Patientenseite, die Suche aber auf der linken. Für die rechte Seite nochmals Eingabe drücken; links ist es %2.</translation>
    </message>
    <message>
        <source>%1 lies on the patient&apos;s left, but the search is on the right. For the left side press Enter again; on the right it is %2.</source>
        <translation>%1 liegt auf der linken Patientenseite, die Suche aber auf der rechten. Für die linke Seite nochmals Eingabe drücken; rechts ist es %2.</translation>
    </message>
    <message>
        <source>Treat on the right, at %1</source>
        <translation>Rechts behandeln, bei %1</translation>
    </message>
    <message>
        <source>Treat on the left, at %1</source>
        <translation>Links behandeln, bei %1</translation>
    </message>
    <message>
        <source>Treatment landmark</source>
        <translation>Landmarke der Behandlung</translation>
    </message>
    <message>
        <source>The spot that answered (the hotspot)</source>
        <translation>Rasterpunkt mit Antwort (der Hotspot)</translation>
    </message>
    <message>
        <source>The spot that answered: not found yet. The stage shows the site as it would be if the middle spot answers.</source>
        <translation>Rasterpunkt mit Antwort: noch nicht gefunden. Die 3D-Ansicht zeigt den Ort, wie er wäre, wenn der mittlere Rasterpunkt antwortet.</translation>
    </message>
    <message>
        <source>The spot that answered: not found yet.</source>
        <translation>Rasterpunkt mit Antwort: noch nicht gefunden.</translation>
    </message>
    <message>
        <source>Circle the spot that gives a steady twitch of the hand. From its pulse point tape %1 forward, parallel to the midline: the treatment site.</source>
        <translation>Den Rasterpunkt einkreisen, bei dem die Hand stetig zuckt. Von seinem Impulspunkt %1 nach vorn messen, parallel zur Mittellinie: der Behandlungsort.</translation>
    </message>
    <message>
        <source>Circle the spot that gives a steady twitch of the hand. The treatment site is the landmark %1.</source>
        <translation>Den Rasterpunkt einkreisen, bei dem die Hand stetig zuckt. Der Behandlungsort ist die Landmarke %1.</translation>
    </message>
    <message>
        <source>hotspot not found yet</source>
        <translation>Hotspot noch nicht gefunden</translation>
    </message>
    <message>
        <source>%1 forward</source>
        <translation>%1 nach vorn</translation>
    </message>
    <message>
        <source>this one</source>
        <translation>dieser</translation>
    </message>
    <message>
        <source>For comparison; it has no label of its own.</source>
        <translation>Zum Vergleich; er hat kein eigenes Kürzel.</translation>
    </message>
    <message>
        <source>The hotspot lies between spots: %1. A spot takes its place.</source>
        <translation>Der Hotspot liegt zwischen Rasterpunkten: %1. Ein Rasterpunkt tritt an seine Stelle.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SmallLengthField</name>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>From %1 to %2 %3.</source>
        <translation>Von %1 bis %2 %3.</translation>
    </message>
    <message>
        <source>%1: type a length from %2 to %3 mm, such as %4; “%5” cannot be used.</source>
        <translation>%1: eine Länge von %2 bis %3 mm eintippen, etwa %4; „%5“ ist nicht brauchbar.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::SpotPad</name>
    <message>
        <source>nose</source>
        <translation>Nase</translation>
    </message>
    <message>
        <source>%1, the hotspot</source>
        <translation>%1, der Hotspot</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::StageDirector</name>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::StageView</name>
    <message>
        <source>Stage</source>
        <translation>3D-Ansicht</translation>
    </message>
    <message>
        <source>The head with tapes, marks and coil. Arrow keys turn the coil, with Ctrl they move it; 1 to 6 choose a view. While points are placed, Enter sets one in the middle of the picture and Ctrl with arrow keys moves it.</source>
        <translation>Der Kopf mit Bändern, Marken und Spule. Pfeiltasten drehen die Spule, mit Strg verschieben sie sie; 1 bis 6 wählen einen Blick. Beim Setzen der Punkte setzt Eingabe einen Punkt in die Bildmitte, und Strg mit Pfeiltasten verschiebt ihn.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::StartPage</name>
    <message>
        <source>What do you begin with?</source>
        <translation>Womit beginnen Sie?</translation>
    </message>
    <message>
        <source>Used lately</source>
        <translation>Zuletzt verwendet</translation>
    </message>
    <message>
        <source>Cases used lately; Enter opens one</source>
        <translation>Zuletzt verwendete Fälle; Eingabe öffnet einen</translation>
    </message>
    <message>
        <source>A new case</source>
        <translation>Ein neuer Fall</translation>
    </message>
    <message>
        <source>A person whose head is measured now</source>
        <translation>Eine Person, deren Kopf jetzt vermessen wird</translation>
    </message>
    <message>
        <source>A case from a file…</source>
        <translation>Ein Fall aus einer Datei…</translation>
    </message>
    <message>
        <source>A case, a scan or an MRI</source>
        <translation>Ein Fall, ein Scan oder ein MRT</translation>
    </message>
    <message>
        <source>The demo case, for trying things out</source>
        <translation>Der Beispielfall, zum Ausprobieren</translation>
    </message>
    <message>
        <source>Not a real person&apos;s head, with everything filled in</source>
        <translation>Kein Kopf einer wirklichen Person, alles ausgefüllt</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Step</name>
    <message>
        <source>Step %1, %2, %3</source>
        <translation>Schritt %1, %2, %3</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::TapesQuestion</name>
    <message>
        <source>The same person&apos;s: keep both</source>
        <translation>Dieselbe Person: beides behalten</translation>
    </message>
    <message>
        <source>Somebody else&apos;s tapes: take them out</source>
        <translation>Maße einer anderen Person: herausnehmen</translation>
    </message>
    <message>
        <source>The wrong head: back to the one before</source>
        <translation>Der falsche Kopf: zurück zum vorigen</translation>
    </message>
    <message>
        <source>Tapes</source>
        <translation>Maße</translation>
    </message>
    <message>
        <source>%1: %2 entered, %3 on this head</source>
        <translation>%1: %2 eingegeben, %3 an diesem Kopf</translation>
    </message>
    <message>
        <source>Whose head is this? The tapes of the case do not fit it. %1.</source>
        <translation>Wessen Kopf ist das? Die Maße des Falls passen nicht dazu. %1.</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::TaskPanel</name>
    <message>
        <source>Take a tool. A drag turns the head, the wheel brings it nearer.</source>
        <translation>Ein Werkzeug nehmen. Ziehen dreht den Kopf, das Rad holt ihn heran.</translation>
    </message>
    <message>
        <source>Press on the skin: the mark under the finger grows darker over a bump or hollow of the bone.</source>
        <translation>Auf die Haut drücken: Über einem Höcker oder einer Mulde des Knochens wird der Fingerabdruck dunkler.</translation>
    </message>
    <message>
        <source>Pull from one place to another; take the end up again to pull on. The right button (H) holds the tape where it is. Read it off its print.</source>
        <translation>Von einer Stelle zur anderen ziehen; das Ende wieder aufnehmen, um weiterzuziehen. Die rechte Taste (H) hält das Band, wo es ist. Am Aufdruck ablesen.</translation>
    </message>
    <message>
        <source>Points and lines are your own help. What is asked for is marked with a cross.</source>
        <translation>Punkte und Striche sind Ihre eigene Hilfe. Was verlangt ist, wird mit einem Kreuz markiert.</translation>
    </message>
    <message>
        <source>A cross is the answer to the step; another one takes its place.</source>
        <translation>Ein Kreuz ist die Antwort auf den Schritt; ein weiteres tritt an seine Stelle.</translation>
    </message>
    <message>
        <source>Carry the coil by its handle, turn it by its wings. Look along its edge as you would at the chair.</source>
        <translation>Die Spule am Griff tragen, an den Flügeln drehen. An ihrer Kante entlang schauen wie am Stuhl.</translation>
    </message>
    <message>
        <source>Task</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <source>Time left</source>
        <translation>Verbleibende Zeit</translation>
    </message>
    <message>
        <source>Steps of the task</source>
        <translation>Schritte der Aufgabe</translation>
    </message>
    <message>
        <source>In the hand</source>
        <translation>In der Hand</translation>
    </message>
    <message>
        <source>Finger</source>
        <translation>Finger</translation>
    </message>
    <message>
        <source>Feel for the bone (F)</source>
        <translation>Nach dem Knochen tasten (F)</translation>
    </message>
    <message>
        <source>Tape</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>Pull the tape over the head (T)</source>
        <translation>Das Band über den Kopf ziehen (T)</translation>
    </message>
    <message>
        <source>Coil</source>
        <translation>Spule</translation>
    </message>
    <message>
        <source>Lay the coil on the head (C)</source>
        <translation>Die Spule auf den Kopf legen (C)</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>A point in pencil, for your own help (P)</source>
        <translation>Ein Punkt mit dem Stift, zur eigenen Hilfe (P)</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Strich</translation>
    </message>
    <message>
        <source>A short line in pencil, for your own help (L)</source>
        <translation>Ein kurzer Strich mit dem Stift, zur eigenen Hilfe (L)</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Kreuz</translation>
    </message>
    <message>
        <source>A cross in pencil: the answer (X)</source>
        <translation>Ein Kreuz mit dem Stift: die Antwort (X)</translation>
    </message>
    <message>
        <source>Hold it here</source>
        <translation>Hier halten</translation>
    </message>
    <message>
        <source>A finger holds the tape where its end is; pull on from there (H)</source>
        <translation>Ein Finger hält das Band an seinem Ende; von da weiterziehen (H)</translation>
    </message>
    <message>
        <source>Close it</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Back to the tape&apos;s zero, around the head (O)</source>
        <translation>Zurück zum Nullpunkt des Bands, um den Kopf herum (O)</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Abnehmen</translation>
    </message>
    <message>
        <source>Takes tape or coil off the head (Delete)</source>
        <translation>Nimmt Band oder Spule vom Kopf (Entf)</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Rubs out what was done last (Ctrl+Z)</source>
        <translation>Radiert das zuletzt Getane aus (Strg+Z)</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>The task before</source>
        <translation>Die Aufgabe davor</translation>
    </message>
    <message>
        <source>Next task</source>
        <translation>Nächste Aufgabe</translation>
    </message>
    <message>
        <source>On to the next task; what is on the head stays</source>
        <translation>Weiter zur nächsten Aufgabe; die Marken bleiben auf dem Kopf</translation>
    </message>
    <message>
        <source>End here</source>
        <translation>Hier beenden</translation>
    </message>
    <message>
        <source>End the exercise and see the score; what is not done counts as not done</source>
        <translation>Die Übung beenden und das Ergebnis sehen; was nicht getan ist, zählt als nicht getan</translation>
    </message>
    <message>
        <source>Task %1 of %2: %3</source>
        <translation>Aufgabe %1 von %2: %3</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>%1, done</source>
        <translation>%1, getan</translation>
    </message>
    <message>
        <source>read off</source>
        <translation>abgelesen</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Teach</name>
    <message>
        <source>Step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>%1 Why: %2</source>
        <comment>what staff do, and why</comment>
        <translation>%1 Warum: %2</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::ThresholdChart</name>
    <message>
        <source>Answers against output</source>
        <translation>Antworten nach Leistung</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>output, %</source>
        <translation>Leistung, %</translation>
    </message>
    <message>
        <source>dots: pulses; shaded: chance of an answer</source>
        <translation>Punkte: Impulse; getönt: Wahrscheinlichkeit einer Antwort</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::ThresholdPanel</name>
    <message>
        <source>Threshold written down</source>
        <translation>Notierte Schwelle</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Write whole percent, as the stimulator shows.</source>
        <translation>Ganze Prozent schreiben, wie der Stimulator sie zeigt.</translation>
    </message>
    <message>
        <source>Threshold</source>
        <translation>Schwelle</translation>
    </message>
    <message>
        <source>%1: try %2 %</source>
        <translation>%1: %2 % versuchen</translation>
    </message>
    <message>
        <source>Takes this output for the next pulse; for finding the threshold only</source>
        <translation>Nimmt diese Leistung für den nächsten Impuls; nur zum Finden der Schwelle</translation>
    </message>
    <message>
        <source>Threshold at spot %1</source>
        <translation>Schwelle am Rasterpunkt %1</translation>
    </message>
    <message>
        <source>No pulse at this spot yet.</source>
        <translation>An diesem Rasterpunkt noch kein Impuls.</translation>
    </message>
    <message>
        <source>Counting</source>
        <translation>Auszählen</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <source>Take the counting&apos;s next output</source>
        <translation>Nächste Leistung des Auszählens</translation>
    </message>
    <message>
        <source>Take the estimate&apos;s next output</source>
        <translation>Nächste Leistung der Schätzung</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::TolerancePanel</name>
    <message>
        <source>By hand, how far off?</source>
        <translation>Abweichung von Hand?</translation>
    </message>
    <message>
        <source>How far off the pulse could be when this case is measured, marked and laid by hand</source>
        <translation>Wie weit der Impuls daneben liegen könnte, wenn dieser Fall von Hand gemessen, markiert und angelegt wird</translation>
    </message>
    <message>
        <source>How far off by hand</source>
        <translation>Abweichung von Hand</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Show where they land</source>
        <translation>Zeigen, wo sie landen</translation>
    </message>
    <message>
        <source>Draws around the treatment site where half, and 95 of 100, of the pulses land</source>
        <translation>Zeichnet um den Behandlungsort, wo die Hälfte und wo 95 von 100 der Impulse landen</translation>
    </message>
    <message>
        <source>Each of the four points</source>
        <translation>Jeder der vier Punkte</translation>
    </message>
    <message>
        <source>One reading of a tape</source>
        <translation>Ein Ablesen des Bandes</translation>
    </message>
    <message>
        <source>A pencil mark</source>
        <translation>Eine Stiftmarke</translation>
    </message>
    <message>
        <source>The coil&apos;s angle</source>
        <translation>Winkel der Spule</translation>
    </message>
    <message>
        <source>°</source>
        <translation>°</translation>
    </message>
    <message>
        <source>Laid by another rule</source>
        <translation>Nach anderer Regel angelegt</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>Work it out</source>
        <translation>Berechnen</translation>
    </message>
    <message>
        <source>Given up.</source>
        <translation>Abgebrochen.</translation>
    </message>
    <message>
        <source>Ways to mark, worst to best: pulse and angle off on average</source>
        <translation>Markierweisen, die schlechteste zuerst: Impuls und Winkel, mittlere Abweichung</translation>
    </message>
    <message>
        <source>To first order. The site mark is used in each. The marks of the one chosen are drawn on the head.</source>
        <translation>In erster Ordnung. Die Ortsmarke wird bei jeder verwendet. Die Marken der gewählten sind am Kopf gezeichnet.</translation>
    </message>
    <message>
        <source>The look past the coil (a guess)</source>
        <translation>Blick an der Spule vorbei (geschätzt)</translation>
    </message>
    <message>
        <source>A way to mark</source>
        <translation>Eine Art zu markieren</translation>
    </message>
    <message>
        <source>%1:
%2, %3°</source>
        <comment>a way to mark, and below it: pulse off, angle off</comment>
        <translation>%1:
%2, %3°</translation>
    </message>
    <message>
        <source>Trials done, in percent</source>
        <translation>Fertige Versuche, in Prozent</translation>
    </message>
    <message>
        <source>Stop the trials</source>
        <translation>Versuche anhalten</translation>
    </message>
    <message>
        <source>The coil&apos;s tilt, to a side and to its front</source>
        <translation>Kippung der Spule, zur Seite und nach vorn</translation>
    </message>
    <message>
        <source>The cap slid forward or back (a guess)</source>
        <translation>Kappe nach vorn oder hinten gerutscht (geschätzt)</translation>
    </message>
    <message>
        <source>The cap slid to a side (a guess)</source>
        <translation>Kappe zu einer Seite gerutscht (geschätzt)</translation>
    </message>
    <message>
        <source>The cap turned (a guess)</source>
        <translation>Kappe gedreht (geschätzt)</translation>
    </message>
    <message>
        <source>Puts all of them back to what they are without an entry</source>
        <translation>Setzt alle auf das zurück, was ohne Eingabe gilt</translation>
    </message>
    <message>
        <source>Try it out by hand</source>
        <translation>Von Hand ausprobieren</translation>
    </message>
    <message>
        <source>&lt;b&gt;%1 off on average&lt;/b&gt;; half of the trials lie within %2 of the site, 95 of 100 within %3. %4 %5&lt;br&gt;%6&lt;br&gt;%7</source>
        <translation>&lt;b&gt;Im Mittel %1 daneben&lt;/b&gt;; die Hälfte der Versuche liegt höchstens %2 vom Ort entfernt, 95 von 100 höchstens %3. %4 %5&lt;br&gt;%6&lt;br&gt;%7</translation>
    </message>
    <message>
        <source>Typical errors</source>
        <translation>Typische Fehler</translation>
    </message>
    <message>
        <source>Errors of the hand (typical)</source>
        <translation>Fehler der Hand (typisch)</translation>
    </message>
    <message>
        <source>Trying it many times…</source>
        <translation>Wird viele Male versucht…</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::TopBar</name>
    <message>
        <source>Worksheet</source>
        <translation>Arbeitsblatt</translation>
    </message>
    <message>
        <source>Enter a case, step by step</source>
        <translation>Einen Fall eingeben, Schritt für Schritt</translation>
    </message>
    <message>
        <source>Teach</source>
        <translation>Lehren</translation>
    </message>
    <message>
        <source>Walk a class through the procedure</source>
        <translation>Eine Klasse durch das Vorgehen führen</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>Check today&apos;s marks, in large type</source>
        <translation>Die heutigen Marken prüfen, in großer Schrift</translation>
    </message>
    <message>
        <source>Explain</source>
        <translation>Erklären</translation>
    </message>
    <message>
        <source>Show a patient what happens</source>
        <translation>Dem Patienten zeigen, was geschieht</translation>
    </message>
    <message>
        <source>Picture…</source>
        <translation>Bild…</translation>
    </message>
    <message>
        <source>Save what the stage shows as a picture</source>
        <translation>Speichern, was die 3D-Ansicht zeigt, als Bild</translation>
    </message>
    <message>
        <source>Sheet…</source>
        <translation>Blatt…</translation>
    </message>
    <message>
        <source>Save the placement sheet as PDF, A4 or Letter</source>
        <translation>Das gedruckte Platzierungsblatt als PDF speichern, A4 oder Letter</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Look back over all visits of the case</source>
        <translation>Auf alle Sitzungen des Falls zurückblicken</translation>
    </message>
    <message>
        <source>Practise</source>
        <translation>Üben</translation>
    </message>
    <message>
        <source>Do the whole job on another head, and see in millimetres what each step costs</source>
        <translation>Die ganze Arbeit an einem anderen Kopf tun und in Millimetern sehen, was jeder Schritt kostet</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::UndoLinks</name>
    <message>
        <source>Point placed</source>
        <translation>Punkt gesetzt</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Visit</name>
    <message>
        <source>Working out tape distances was cut short; enter the distances again.</source>
        <translation>Das Berechnen der Bandabstände wurde abgebrochen; die Abstände neu eingeben.</translation>
    </message>
    <message>
        <source>Today&apos;s site mark</source>
        <translation>Heutige Ortsmarke</translation>
    </message>
    <message>
        <source>Today&apos;s edge mark</source>
        <translation>Heutige Kantenmarke</translation>
    </message>
    <message>
        <source>No spot of the grid has answered yet, so nobody knows where the site is; say which did in the step of the site first.</source>
        <translation>Noch hat kein Rasterpunkt geantwortet, daher weiß niemand, wo der Ort ist; zuerst im Schritt „Ort“ angeben, welcher es war.</translation>
    </message>
    <message>
        <source>Check started over</source>
        <translation>Prüfung neu begonnen</translation>
    </message>
    <message>
        <source>Cap</source>
        <translation>Kappe</translation>
    </message>
    <message>
        <source>Allowed distance and angle</source>
        <translation>Erlaubter Abstand und Winkel</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::WhatIfControls</name>
    <message>
        <source>What if: %1</source>
        <translation>Was, wenn: %1</translation>
    </message>
    <message>
        <source>Off by</source>
        <translation>Daneben um</translation>
    </message>
    <message>
        <source>The vertex is marked too far</source>
        <translation>Der Vertex ist zu weit markiert nach</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>Toward the nose</source>
        <translation>Zur Nase hin</translation>
    </message>
    <message>
        <source>back</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>Toward the back of the head</source>
        <translation>Zum Hinterkopf hin</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>Toward the patient&apos;s left ear</source>
        <translation>Zum linken Ohr des Patienten hin</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>Toward the patient&apos;s right ear</source>
        <translation>Zum rechten Ohr des Patienten hin</translation>
    </message>
    <message>
        <source>The tape</source>
        <translation>Das Band</translation>
    </message>
    <message>
        <source>from the vertex toward the ear</source>
        <translation>vom Vertex zum Ohr</translation>
    </message>
    <message>
        <source>The first length to the search start</source>
        <translation>Die erste Länge zum Suchstart</translation>
    </message>
    <message>
        <source>then forward to the start</source>
        <translation>dann nach vorn zum Suchstart</translation>
    </message>
    <message>
        <source>The second length to the search start</source>
        <translation>Die zweite Länge zum Suchstart</translation>
    </message>
    <message>
        <source>forward from the hotspot</source>
        <translation>vom Hotspot nach vorn</translation>
    </message>
    <message>
        <source>The length to the treatment site</source>
        <translation>Die Länge zum Behandlungsort</translation>
    </message>
    <message>
        <source>from the site to the edge mark</source>
        <translation>vom Ort zur Kantenmarke</translation>
    </message>
    <message>
        <source>The length along the coil&apos;s front</source>
        <translation>Die Länge in Richtung der Spulenfront</translation>
    </message>
    <message>
        <source>The mark comes too far out</source>
        <translation>Die Marke gerät zu weit hinaus</translation>
    </message>
    <message>
        <source>The mark comes too near</source>
        <translation>Die Marke gerät zu nah</translation>
    </message>
    <message>
        <source>Turned by</source>
        <translation>Gedreht um</translation>
    </message>
    <message>
        <source>The coil&apos;s front is turned</source>
        <translation>Die Spulenfront ist gedreht</translation>
    </message>
    <message>
        <source>toward the midline</source>
        <translation>zur Mittellinie hin</translation>
    </message>
    <message>
        <source>away from it</source>
        <translation>von ihr weg</translation>
    </message>
    <message>
        <source>The coil is laid on the mark by the rule</source>
        <translation>Die Spule wird auf der Marke angelegt nach der Regel</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>The mark lies the centre-to-edge length away, by tape along the skin</source>
        <translation>Die Marke liegt um die Länge der Spule entfernt, mit dem Band auf der Haut</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>The mark lies where one sees it looking straight down past the edge</source>
        <translation>Die Marke liegt, wo man sie senkrecht an der Kante vorbei sieht</translation>
    </message>
    <message>
        <source>nearest</source>
        <translation>Nahpunkt</translation>
    </message>
    <message>
        <source>The mark lies on the skin nearest to the edge</source>
        <translation>Die Marke liegt an der Stelle der Haut, die der Kante am nächsten ist</translation>
    </message>
    <message>
        <source>Back to the lesson</source>
        <translation>Zurück zur Lektion</translation>
    </message>
    <message>
        <source>The vertex is off</source>
        <translation>Der Vertex liegt falsch</translation>
    </message>
    <message>
        <source>The vertex is marked in the wrong place</source>
        <translation>Der Vertex ist an der falschen Stelle markiert</translation>
    </message>
    <message>
        <source>A tape is misread</source>
        <translation>Ein Band falsch abgelesen</translation>
    </message>
    <message>
        <source>One length is read too long or too short</source>
        <translation>Eine Länge wird zu lang oder zu kurz abgelesen</translation>
    </message>
    <message>
        <source>The coil is turned</source>
        <translation>Die Spule ist verdreht</translation>
    </message>
    <message>
        <source>Another marking rule</source>
        <translation>Andere Markierregel</translation>
    </message>
    <message>
        <source>Marked by one rule, laid by another</source>
        <translation>Nach einer Regel gezeichnet, nach einer anderen angelegt</translation>
    </message>
    <message>
        <source>The cap has slipped</source>
        <translation>Die Kappe ist verrutscht</translation>
    </message>
    <message>
        <source>The marks are on the cap, and it sits in another place</source>
        <translation>Die Marken sind auf der Kappe, und diese sitzt an einer anderen Stelle</translation>
    </message>
    <message>
        <source>A look from aside</source>
        <translation>Ein schräger Blick</translation>
    </message>
    <message>
        <source>The eye looks past the coil&apos;s edge at the mark, off the axis</source>
        <translation>Das Auge blickt an der Kante der Spule vorbei auf die Marke, neben der Achse</translation>
    </message>
    <message>
        <source>Slid by</source>
        <translation>Gerutscht um</translation>
    </message>
    <message>
        <source>The cap is</source>
        <translation>Die Kappe ist</translation>
    </message>
    <message>
        <source>slid forward</source>
        <translation>nach vorn gerutscht</translation>
    </message>
    <message>
        <source>Its brim comes down over the forehead</source>
        <translation>Ihr Rand kommt über die Stirn herunter</translation>
    </message>
    <message>
        <source>slid back</source>
        <translation>nach hinten gerutscht</translation>
    </message>
    <message>
        <source>Its brim goes up the forehead</source>
        <translation>Ihr Rand wandert die Stirn hinauf</translation>
    </message>
    <message>
        <source>slid to the patient&apos;s left</source>
        <translation>zur linken Patientenseite gerutscht</translation>
    </message>
    <message>
        <source>Its brim comes down over the left ear</source>
        <translation>Ihr Rand kommt über das linke Ohr herunter</translation>
    </message>
    <message>
        <source>slid to the patient&apos;s right</source>
        <translation>zur rechten Patientenseite gerutscht</translation>
    </message>
    <message>
        <source>Its brim comes down over the right ear</source>
        <translation>Ihr Rand kommt über das rechte Ohr herunter</translation>
    </message>
    <message>
        <source>turned to the patient&apos;s left</source>
        <translation>zur linken Patientenseite gedreht</translation>
    </message>
    <message>
        <source>Its arrow passes left of the nose</source>
        <translation>Ihr Pfeil verläuft links an der Nase vorbei</translation>
    </message>
    <message>
        <source>turned to the patient&apos;s right</source>
        <translation>zur rechten Patientenseite gedreht</translation>
    </message>
    <message>
        <source>Its arrow passes right of the nose</source>
        <translation>Ihr Pfeil verläuft rechts an der Nase vorbei</translation>
    </message>
    <message>
        <source>Off the coil&apos;s axis by</source>
        <translation>Neben der Achse der Spule um</translation>
    </message>
    <message>
        <source>The eye looks</source>
        <translation>Das Auge blickt</translation>
    </message>
    <message>
        <source>from the front</source>
        <translation>von vorn</translation>
    </message>
    <message>
        <source>It stands before the coil&apos;s front</source>
        <translation>Es steht vor der Spulenfront</translation>
    </message>
    <message>
        <source>from the handle</source>
        <translation>vom Griff her</translation>
    </message>
    <message>
        <source>It stands on the handle&apos;s side</source>
        <translation>Es steht auf der Seite des Griffs</translation>
    </message>
    <message>
        <source>from the left</source>
        <translation>von links</translation>
    </message>
    <message>
        <source>Of the coil, seen from its handle</source>
        <translation>Seite der Spule, vom Griff aus gesehen</translation>
    </message>
    <message>
        <source>from the right</source>
        <translation>von rechts</translation>
    </message>
    <message>
        <source>Nothing wrong</source>
        <translation>Nichts falsch</translation>
    </message>
    <message>
        <source>The angle is wrong</source>
        <translation>Der Winkel ist falsch</translation>
    </message>
    <message>
        <source>Hair lies under it, or a wing is lifted</source>
        <translation>Haar liegt darunter, oder ein Flügel ist angehoben</translation>
    </message>
    <message>
        <source>Misread by</source>
        <translation>Falsch abgelesen um</translation>
    </message>
    <message>
        <source>It is read</source>
        <translation>Abgelesen wird</translation>
    </message>
    <message>
        <source>too long</source>
        <translation>zu lang</translation>
    </message>
    <message>
        <source>too short</source>
        <translation>zu kurz</translation>
    </message>
    <message>
        <source>The coil is turned about</source>
        <translation>Drehpunkt der Spule ist</translation>
    </message>
    <message>
        <source>its edge mark</source>
        <translation>ihre Kantenmarke</translation>
    </message>
    <message>
        <source>The edge stays on its mark, the centre moves</source>
        <translation>Die Kante bleibt auf ihrer Marke, die Mitte wandert</translation>
    </message>
    <message>
        <source>its centre</source>
        <translation>ihre Mitte</translation>
    </message>
    <message>
        <source>The centre stays on the site</source>
        <translation>Die Mitte bleibt am Ort</translation>
    </message>
    <message>
        <source>To a larger angle</source>
        <translation>Zu einem größeren Winkel</translation>
    </message>
    <message>
        <source>To a smaller angle</source>
        <translation>Zu einem kleineren Winkel</translation>
    </message>
    <message>
        <source>What keeps it off</source>
        <translation>Was sie fernhält</translation>
    </message>
    <message>
        <source>hair or air under it</source>
        <translation>Haar oder Luft darunter</translation>
    </message>
    <message>
        <source>All of the coil lies further off</source>
        <translation>Die ganze Spule liegt weiter weg</translation>
    </message>
    <message>
        <source>its left wing is lifted</source>
        <translation>ihr linker Flügel ist angehoben</translation>
    </message>
    <message>
        <source>Left as seen from its handle</source>
        <translation>Links, vom Griff aus gesehen</translation>
    </message>
    <message>
        <source>its right wing is lifted</source>
        <translation>ihr rechter Flügel ist angehoben</translation>
    </message>
    <message>
        <source>Right as seen from its handle</source>
        <translation>Rechts, vom Griff aus gesehen</translation>
    </message>
    <message>
        <source>More gap</source>
        <translation>Mehr Spalt</translation>
    </message>
    <message>
        <source>Lifted by</source>
        <translation>Angehoben um</translation>
    </message>
    <message>
        <source>The coil is not on the skin</source>
        <translation>Die Spule liegt nicht auf der Haut</translation>
    </message>
    <message>
        <source>Keep it, and choose a second</source>
        <translation>Behalten und einen zweiten wählen</translation>
    </message>
    <message>
        <source>Two things go wrong at once: the next one you choose comes on top of this one</source>
        <translation>Zweierlei misslingt zugleich: Was als Nächstes gewählt wird, kommt zu diesem hinzu</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::WorkBar</name>
    <message>
        <source>Progress of the work</source>
        <translation>Fortschritt der Arbeit</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>scalpmark::window::Worksheet</name>
    <message>
        <source>Worksheet</source>
        <translation>Arbeitsblatt</translation>
    </message>
</context>
</TS>
