# Installs what was built under a prefix of its own, and runs it from there as somebody would who has no source:
# version, the demo's plan, a picture of it, its desktop files. cmake -DBUILT=FOLDER -DPREFIX=FOLDER
# -P installed.cmake
cmake_minimum_required(VERSION 3.25)

function(run)
  execute_process(COMMAND ${ARGV} WORKING_DIRECTORY ${PREFIX} RESULT_VARIABLE code OUTPUT_VARIABLE out ERROR_VARIABLE err)
  if(NOT code EQUAL 0)
    message(FATAL_ERROR "${ARGV}: ${code}\n${out}\n${err}")
  endif()
  set(out "${out}" PARENT_SCOPE)
endfunction()

function(expect file begins_with)
  if(NOT EXISTS ${PREFIX}/${file})
    message(FATAL_ERROR "${file} is missing under ${PREFIX}")
  endif()
  string(LENGTH "${begins_with}" digits)
  math(EXPR bytes "${digits} / 2")
  file(READ ${PREFIX}/${file} found LIMIT ${bytes} HEX)
  if(NOT found STREQUAL begins_with)
    message(FATAL_ERROR "${file} begins with ${found}, not ${begins_with}")
  endif()
endfunction()

file(REMOVE_RECURSE ${PREFIX})
file(MAKE_DIRECTORY ${PREFIX})
run(${CMAKE_COMMAND} --install ${BUILT} --prefix ${PREFIX})

set(program ${PREFIX}/bin/scalpmark)
run(${program} --version)
if(NOT out MATCHES "^scalpmark [0-9]+\\.[0-9]+")
  message(FATAL_ERROR "--version says: ${out}")
endif()
set(demo share/scalpmark/demo/bench-head.json)
# Without a display, and with nothing of this user's.
set(alone ${CMAKE_COMMAND} -E env --unset=DISPLAY XDG_CACHE_HOME=${BUILT}/test-cache ${program})
run(${alone} solve ${demo} --out plan.json)
expect(plan.json 7b)                           # {
run(${alone} picture ${demo} --size 640x480 --out picture.png)
expect(picture.png 89504e470d0a1a0a)           # PNG's signature (ISO/IEC 15948)
# Reads a file in a process of its own, which is the installed program again.
run(${alone} head /usr/share/mricron/templates/ch2.nii.gz --out skin.ply)
expect(skin.ply 706c79)                        # ply
expect(share/scalpmark/schema/case.schema.json 7b)
run(${alone} export ${demo} --out head.glb)
expect(head.glb 676c5446)                      # glTF
# What a desktop takes of it, by the desktop's own tools.
expect(share/icons/hicolor/scalable/apps/scalpmark.svg 3c3f786d6c)  # <?xml
run(desktop-file-validate share/applications/scalpmark.desktop)
run(appstreamcli validate --no-net share/metainfo/local.scalpmark.Scalpmark.metainfo.xml)
file(COPY ${PREFIX}/share/mime/packages DESTINATION ${PREFIX}/mime)
run(update-mime-database mime)
file(READ ${PREFIX}/mime/types types)
if(NOT types MATCHES "application/vnd.scalpmark.case\\+json")
  message(FATAL_ERROR "the type of cases is not among: ${types}")
endif()
# A case is known by its content, whatever its name; a plan is none.
file(COPY_FILE ${PREFIX}/${demo} ${PREFIX}/unnamed-case)
file(COPY_FILE ${PREFIX}/plan.json ${PREFIX}/unnamed-plan)
foreach(file unnamed-case unnamed-plan)
  run(${CMAKE_COMMAND} -E env XDG_DATA_HOME=${PREFIX} XDG_DATA_DIRS=/usr/share gio info -a standard::content-type ${PREFIX}/${file})
  string(REGEX MATCH "content-type: [^\n]*" ${file} "${out}")
endforeach()
if(NOT unnamed-case STREQUAL "content-type: application/vnd.scalpmark.case+json" OR unnamed-plan MATCHES "scalpmark")
  message(FATAL_ERROR "a case is taken for ${unnamed-case}, a plan for ${unnamed-plan}")
endif()
# The manual page has every command that the help has.
run(gzip -dc share/man/man1/scalpmark.1.gz)
set(manual "${out}")
run(${program} --help)
string(REGEX MATCHALL "\n  [a-z]+ " commands "${out}")
list(LENGTH commands count)
if(count LESS 10)
  message(FATAL_ERROR "the help has ${count} commands: ${out}")
endif()
foreach(command ${commands})
  string(STRIP ${command} command)
  if(NOT manual MATCHES "BI ${command} ")
    message(FATAL_ERROR "the manual page does not name the command ${command}")
  endif()
endforeach()
file(REMOVE_RECURSE ${PREFIX})
