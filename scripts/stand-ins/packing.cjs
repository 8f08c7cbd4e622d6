// Stands in for the packing library until something is packed or unpacked: it works out its tables as it is loaded.
const library = () => require("fflate/browser");

module.exports = {
  zipSync: (...given) => library().zipSync(...given),
  zlibSync: (...given) => library().zlibSync(...given),
  get Unzip() {
    return library().Unzip;
  },
  get UnzipInflate() {
    return library().UnzipInflate;
  },
};
