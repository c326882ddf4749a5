#include "geo/frame/vector_library.h"

#include <cpl_conv.h>
#include <cpl_error.h>
#include <cpl_http.h>
#include <gdal_frmts.h>
#include <ogr_srs_api.h>
#include <ogrsf_frmts.h>

#include <mutex>

namespace plugside {

namespace {

// A GeoJSON file may name its reference system by a link, which the library would follow: every request of its
// own ends here.
CPLHTTPResult* refuse_request(const char*, CSLConstList, GDALProgressFunc, void*, CPLHTTPFetchWriteFunc, void*, void*) {
    auto* result = static_cast<CPLHTTPResult*>(CPLCalloc(1, sizeof(CPLHTTPResult)));
    result->nStatus = 1;
    result->pszErrBuf = CPLStrdup("nothing is ever fetched from a network");
    return result;
}

}  // namespace

void prepare_vector_library() {
    static std::once_flag once;
    std::call_once(once, [] {
        CPLSetConfigOption("CPL_VSIL_CURL_ALLOWED_EXTENSIONS", ".none");
        CPLHTTPSetFetchCallback(refuse_request, nullptr);
        OSRSetPROJEnableNetwork(0);
        RegisterOGRGeoPackage();
        RegisterOGRGeoJSON();
        RegisterOGRLIBKML();
        RegisterOGRShape();
        RegisterOGRFlatGeobuf();
        GDALRegister_JPEG();
        // A picture's side files (.aux.xml and the like) are nobody's to read here.
        CPLSetConfigOption("GDAL_PAM_ENABLED", "NO");
        CPLSetConfigOption("GDAL_DISABLE_READDIR_ON_OPEN", "EMPTY_DIR");
    });
}

LibraryMessages::LibraryMessages() {
    CPLPushErrorHandlerEx(
        [](CPLErr weight, CPLErrorNum, const char* message) {
            if (weight == CE_Debug || weight == CE_None) return;
            auto* self = static_cast<LibraryMessages*>(CPLGetErrorHandlerUserData());
            self->note(weight == CE_Failure || weight == CE_Fatal, message);
        },
        this);
}

LibraryMessages::~LibraryMessages() { CPLPopErrorHandler(); }

void LibraryMessages::note(bool is_failure, const char* message) {
    constexpr std::size_t most_warnings = 50;
    if (is_failure && failure_.empty()) failure_ = message;
    if (!is_failure && warnings_.size() < most_warnings) warnings_.emplace_back(message);
}

}  // namespace plugside
