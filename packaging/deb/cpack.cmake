# The Debian packages: one a component, what they need found by dpkg-shlibdeps; screens are loaded
# by name, so theirs is listed.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_PACKAGE_VENDOR "The Ledgerboard project")
set(CPACK_PACKAGE_CONTACT "The Ledgerboard project <project@ledgerboard.example>")
set(CPACK_DEBIAN_PACKAGE_HOMEPAGE "https://ledgerboard.example/")
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_COMPONENTS_ALL ledgerboard phone peer ofx dev)
set(CPACK_DEB_COMPONENT_INSTALL ON)
set(CPACK_DEBIAN_ENABLE_COMPONENT_DEPENDS OFF)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_RELEASE 1)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)

# The folder list is what Qt's own file dialog wants, where the desktop has none; without it the
# program would fall over.
set(screens "fonts-lato, fonts-roboto-slab, qml6-module-qt-labs-folderlistmodel, \
qml6-module-qtqml, qml6-module-qtqml-models, \
qml6-module-qtqml-workerscript, qml6-module-qtquick, qml6-module-qtquick-controls, \
qml6-module-qtquick-dialogs, qml6-module-qtquick-layouts, qml6-module-qtquick-shapes, \
qml6-module-qtquick-templates, qml6-module-qtquick-window, tzdata")

set(CPACK_DEBIAN_LEDGERBOARD_PACKAGE_NAME ledgerboard)
set(CPACK_DEBIAN_LEDGERBOARD_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_LEDGERBOARD_PACKAGE_DEPENDS "${screens}")
set(CPACK_DEBIAN_LEDGERBOARD_PACKAGE_SUGGESTS "ledgerboard-ofx, ledgerboard-peer")
set(CPACK_DEBIAN_LEDGERBOARD_DESCRIPTION
    "numbers of a house under renovation, from walk notes to the sale
For who renovates houses to sell them: walk notes become a priced scope of
work; budget, plan, spend, progress, draws and profit are reviewed each week.
Works without a network; phones and laptops agree when they meet the peer.
This is the command line and the desktop client.")
set(CPACK_DEBIAN_PHONE_PACKAGE_NAME ledgerboard-phone)
set(CPACK_DEBIAN_PHONE_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PHONE_PACKAGE_DEPENDS "${screens}, qml6-module-qtmultimedia")
# The camera is Qt's, which leans on GStreamer here.
set(CPACK_DEBIAN_PHONE_PACKAGE_RECOMMENDS
    "gstreamer1.0-plugins-base, gstreamer1.0-plugins-good, pulseaudio | pipewire-pulse")
set(CPACK_DEBIAN_PHONE_DESCRIPTION
    "progress, photos and punch list of a renovation by thumb
The phone client of Ledgerboard, for phones that run Debian: mark work done,
photograph it, note what is wrong and what was paid, with no signal; what is
kept is on disk before the screen says so. Crew leads see their own work only.")
set(CPACK_DEBIAN_PEER_PACKAGE_NAME ledgerboard-peer)
set(CPACK_DEBIAN_PEER_PACKAGE_SECTION net)
set(CPACK_DEBIAN_PEER_PACKAGE_DEPENDS "adduser")
set(CPACK_DEBIAN_PEER_PACKAGE_CONTROL_EXTRA
    ${CMAKE_CURRENT_LIST_DIR}/peer/postinst ${CMAKE_CURRENT_LIST_DIR}/peer/prerm
    ${CMAKE_CURRENT_LIST_DIR}/peer/postrm)
set(CPACK_DEBIAN_PEER_DESCRIPTION
    "peer through which the devices of Ledgerboard meet
A small program on a laptop, a box in the office or a rented machine. Phones
and laptops send it what they have and take what is for them, over TLS, each
request signed; crew leads are never sent an amount of money.")
set(CPACK_DEBIAN_OFX_PACKAGE_NAME ledgerboard-ofx)
set(CPACK_DEBIAN_OFX_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_OFX_PACKAGE_ENHANCES ledgerboard)
set(CPACK_DEBIAN_OFX_DESCRIPTION
    "reads bank downloads (OFX, QFX) for Ledgerboard
A small program of its own, because the library it uses is under the GNU
General Public License. Prints the lines of a download as JSON.")
set(CPACK_DEBIAN_DEV_PACKAGE_NAME libledgerboard-dev)
set(CPACK_DEBIAN_DEV_PACKAGE_SECTION libdevel)
set(CPACK_DEBIAN_DEV_PACKAGE_DEPENDS "libsodium-dev, libsqlite3-dev, nlohmann-json3-dev")
set(CPACK_DEBIAN_DEV_DESCRIPTION
    "core of Ledgerboard for other programs
Static libraries and headers: the catalog of records, the book they are kept
in, everything that is computed from them, and the weekly page.")
include(CPack)
