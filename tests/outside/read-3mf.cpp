// Prints what lib3mf 1.8 (the 3MF Consortium's reader) finds in 3MF files, one JSON document a line. Lengths in the unit
// of the file. A file that it refuses in strict mode is told with the number of its reason.
#include <cmath>
#include <cstdio>
#include <string>
#include <vector>

#include "Model/COM/NMR_DLLInterfaces.h"

using namespace NMR;

static std::string quoted(const std::string &text) {
  std::string out = "\"";
  char code[8];
  for (unsigned char letter : text) {
    if (letter == '"' || letter == '\\') out += '\\';
    if (letter < 0x20) {
      snprintf(code, sizeof code, "\\u%04x", letter);
      out += code;
    } else {
      out += static_cast<char>(letter);
    }
  }
  return out + "\"";
}

template <typename Ask> static std::string text(Ask ask) {
  ULONG needed = 0;
  if (ask(nullptr, 0, &needed) != LIB3MF_OK) return "";
  std::vector<char> buffer(needed + 1, 0);
  if (ask(buffer.data(), needed + 1, &needed) != LIB3MF_OK) return "";
  return buffer.data();
}

static double volume(PLib3MFModelMeshObject *mesh, DWORD triangles) {
  double six = 0;
  for (DWORD index = 0; index < triangles; index++) {
    MODELMESHTRIANGLE triangle;
    lib3mf_meshobject_gettriangle(mesh, index, &triangle);
    double p[3][3];
    for (int corner = 0; corner < 3; corner++) {
      MODELMESHVERTEX vertex;
      lib3mf_meshobject_getvertex(mesh, triangle.m_nIndices[corner], &vertex);
      for (int axis = 0; axis < 3; axis++) p[corner][axis] = vertex.m_fPosition[axis];
    }
    six += p[0][0] * (p[1][1] * p[2][2] - p[1][2] * p[2][1]) - p[0][1] * (p[1][0] * p[2][2] - p[1][2] * p[2][0]) +
           p[0][2] * (p[1][0] * p[2][1] - p[1][1] * p[2][0]);
  }
  return six / 6;
}

static std::string metadata(PLib3MFModel *model) {
  DWORD count = 0;
  lib3mf_model_getmetadatacount(model, &count);
  std::string out;
  for (DWORD index = 0; index < count; index++) {
    auto key = text([&](LPSTR to, ULONG size, ULONG *n) {
      return lib3mf_model_getmetadatakeyutf8(model, index, to, size, n);
    });
    auto value = text([&](LPSTR to, ULONG size, ULONG *n) {
      return lib3mf_model_getmetadatavalueutf8(model, index, to, size, n);
    });
    out += (index ? "," : "") + quoted(key) + ":" + quoted(value);
  }
  return "{" + out + "}";
}

static std::string objects(PLib3MFModel *model) {
  PLib3MFModelResourceIterator *all;
  lib3mf_model_getmeshobjects(model, &all);
  std::string out;
  for (;;) {
    BOOL more = 0;
    if (lib3mf_resourceiterator_movenext(all, &more) != LIB3MF_OK || !more) break;
    PLib3MFModelResource *mesh;
    lib3mf_resourceiterator_getcurrent(all, &mesh);
    auto name = text([&](LPSTR to, ULONG size, ULONG *n) { return lib3mf_object_getnameutf8(mesh, to, size, n); });
    DWORD vertices = 0, triangles = 0;
    BOOL sound = 0;
    lib3mf_meshobject_getvertexcount(mesh, &vertices);
    lib3mf_meshobject_gettrianglecount(mesh, &triangles);
    lib3mf_meshobject_ismanifoldandoriented(mesh, &sound);
    char numbers[200];
    snprintf(numbers, sizeof numbers, ",\"vertices\":%u,\"triangles\":%u,\"sound\":%s,\"volume\":%.6f}", vertices,
             triangles, sound ? "true" : "false", volume(mesh, triangles));
    out += (out.empty() ? "" : ",") + ("{\"name\":" + quoted(name)) + numbers;
    lib3mf_release(mesh);
  }
  lib3mf_release(all);
  return "[" + out + "]";
}

static std::string items(PLib3MFModel *model) {
  PLib3MFModelBuildItemIterator *all;
  lib3mf_model_getbuilditems(model, &all);
  std::string out;
  for (;;) {
    BOOL more = 0;
    if (lib3mf_builditemiterator_movenext(all, &more) != LIB3MF_OK || !more) break;
    PLib3MFModelBuildItem *item;
    PLib3MFModelObjectResource *object;
    MODELTRANSFORM place;
    lib3mf_builditemiterator_getcurrent(all, &item);
    lib3mf_builditem_getobjectresource(item, &object);
    lib3mf_builditem_getobjecttransform(item, &place);
    auto name = text([&](LPSTR to, ULONG size, ULONG *n) { return lib3mf_object_getnameutf8(object, to, size, n); });
    char at[120];
    snprintf(at, sizeof at, ",\"at\":[%.4f,%.4f,%.4f]}", place.m_fFields[0][3], place.m_fFields[1][3],
             place.m_fFields[2][3]);
    out += (out.empty() ? "" : ",") + ("{\"of\":" + quoted(name)) + at;
    lib3mf_release(object);
    lib3mf_release(item);
  }
  lib3mf_release(all);
  return "[" + out + "]";
}

static void print(const char *path) {
  PLib3MFModel *model;
  PLib3MFModelReader *reader;
  lib3mf_createmodel(&model);
  lib3mf_model_queryreader(model, "3mf", &reader);
  lib3mf_reader_setstrictmodeactive(reader, 1);
  LIB3MFRESULT result = lib3mf_reader_readfromfileutf8(reader, path);
  DWORD warnings = 0, unit = 0;
  lib3mf_reader_getwarningcount(reader, &warnings);
  lib3mf_model_getunit(model, &unit);
  PLib3MFModelAttachment *picture = nullptr;
  lib3mf_model_getpackagethumbnailattachment(model, 0, &picture);
  printf("{\"path\":%s,\"result\":%d,\"warnings\":%u,\"unit\":%u,\"picture\":%s,\"metadata\":%s,\"objects\":%s,\"items\":%s}\n",
         quoted(path).c_str(), static_cast<int>(result), warnings, unit, picture ? "true" : "false",
         metadata(model).c_str(), objects(model).c_str(), items(model).c_str());
  if (picture) lib3mf_release(picture);
  lib3mf_release(reader);
  lib3mf_release(model);
}

int main(int count, char **paths) {
  for (int index = 1; index < count; index++) print(paths[index]);
  return 0;
}
