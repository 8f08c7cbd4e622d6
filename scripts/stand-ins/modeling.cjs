// The parts of the modelling library that the program and the STL writer use, without the rest of it.
module.exports = {
  geometries: {
    geom3: {
      create: require("@jscad/modeling/src/geometries/geom3/create"),
      toPolygons: require("@jscad/modeling/src/geometries/geom3/toPolygons"),
    },
    poly3: {
      create: require("@jscad/modeling/src/geometries/poly3/create"),
      plane: require("@jscad/modeling/src/geometries/poly3/plane"),
    },
  },
  text: { vectorText: require("@jscad/modeling/src/text/vectorText") },
};
