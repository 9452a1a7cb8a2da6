# Writes OUTPUT, a C++ source that holds the text of every table of FOLDER.
# Called by the build with -D FOLDER=... -D OUTPUT=...
file(GLOB tables "${FOLDER}/*.tsv")
list(SORT tables)
set(source "// Made from core/intake/tables by the build.\n#include \"core/intake/tables/embedded.h\"\n\n")
string(APPEND source "namespace ledgerboard::intake {\n\nstd::string_view embeddedTable(std::string_view name) {\n")
foreach(table IN LISTS tables)
    get_filename_component(name "${table}" NAME_WE)
    file(READ "${table}" text)
    string(APPEND source "    if (name == \"${name}\") {\n        return R\"~table~(${text})~table~\";\n    }\n")
endforeach()
string(APPEND source "    return {};\n}\n\n}  // namespace ledgerboard::intake\n")
file(WRITE "${OUTPUT}.new" "${source}")
file(COPY_FILE "${OUTPUT}.new" "${OUTPUT}" ONLY_IF_DIFFERENT)
