# What of a desktop is installed beside the program, and the Debian package (cpack -G DEB; scripts/package does it all).
# example.org stands for nobody (RFC 2606): who gives the package on writes an address here.
set(SCALPMARK_MAIL "scalpmark@example.org" CACHE STRING "Where the package's users can write to")
set(here ${CMAKE_CURRENT_LIST_DIR})
set(made ${PROJECT_BINARY_DIR}/packaging)

# /usr for the manual page of a package, wherever this build would be installed.
set(CMAKE_INSTALL_FULL_DATADIR /usr/share)
foreach(file scalpmark.1 scalpmark.metainfo.xml changelog)
  configure_file(${here}/${file}.in ${made}/${file} @ONLY)
endforeach()
# Debian wants manual pages and changes compressed, without a time in them (policy 12.1, 12.7).
find_program(GZIP gzip REQUIRED)
foreach(pair scalpmark.1:scalpmark.1.gz changelog:changelog.Debian.gz)
  string(REPLACE ":" ";" pair ${pair})
  list(GET pair 0 plain)
  list(GET pair 1 packed)
  add_custom_command(OUTPUT ${made}/${packed} DEPENDS ${made}/${plain}
    COMMAND sh -c "${GZIP} -9nc ${made}/${plain} >${made}/${packed}")
  list(APPEND packed_files ${made}/${packed})
endforeach()
add_custom_target(scalpmark_packed ALL DEPENDS ${packed_files})
add_dependencies(scalpmark scalpmark_packed)

install(FILES ${here}/scalpmark.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${here}/scalpmark.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
install(FILES ${here}/scalpmark-mime.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages RENAME scalpmark.xml)
install(FILES ${made}/scalpmark.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo
  RENAME local.scalpmark.Scalpmark.metainfo.xml)
install(FILES ${made}/scalpmark.1.gz DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
install(FILES ${made}/changelog.Debian.gz ${here}/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME scalpmark)
set(CPACK_PACKAGE_VENDOR "The Scalpmark developers")
set(CPACK_PACKAGE_CONTACT "The Scalpmark developers <${SCALPMARK_MAIL}>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "where the pulse goes of a coil laid by tape measure")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"For clinics and classrooms of brain stimulation (TMS) without a tracking
camera: from tape measures, a marked cap and a figure-of-eight coil to the
place where the pulse really goes, on this patient's head. With sheets and
paper strips to print, pictures, and a head for a 3D printer.
.
Training and illustration only; not a navigation or treatment device.")
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_RELEASE 1)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# Drawing without a screen: a virtual one, Mesa's software OpenGL, and letters; Qt's platform is loaded, not linked.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "xvfb, xauth, libgl1-mesa-dri, fonts-dejavu-core")
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "mricron-data, qttranslations5-l10n, shared-mime-info, desktop-file-utils")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE
  WORLD_READ WORLD_EXECUTE)
set(CPACK_PACKAGE_DIRECTORY ${PROJECT_BINARY_DIR}/package)
include(CPack)
