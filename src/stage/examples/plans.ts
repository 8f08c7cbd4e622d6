/** The plans that examples of defects are changes of, by the names of their files in presets/examples. */
export const EXAMPLE_PLANS = {
  "example-stage.yaml": `# yaml-language-server: $schema=../schemas/stage.json
# A wide lift, sound but for five warnings: the machine that explain and docs/messages.md spoil with one setting after
# the other, to show what is then told. Invented.
format: 1
stage: example-stage

bars:
  front: { bar: 30x30 slot 8, from: [0, 15, -15], to: [760, 15, -15] }
  back: { bar: 30x30 slot 8, from: [0, 545, -15], to: [760, 545, -15] }
  left: { bar: 30x30 slot 8, from: [15, 30, -15], to: [15, 530, -15] }
  right: { bar: 30x30 slot 8, from: [745, 30, -15], to: [745, 530, -15] }
  post-left: { bar: V 20x20, from: [15, 280, 0], to: [15, 280, 500] }
  post-right: { bar: V 20x20, from: [745, 280, 0], to: [745, 280, 500] }
  arm-front: { bar: 30x30 slot 8, from: [35.5, 96, 115], to: [724.5, 96, 115], moves: true }
  arm-back: { bar: 30x30 slot 8, from: [35.5, 464, 115], to: [724.5, 464, 115], moves: true }
  side-left: { bar: 30x30 slot 8, from: [50.5, 111, 115], to: [50.5, 449, 115], moves: true }
  side-right: { bar: 30x30 slot 8, from: [709.5, 111, 115], to: [709.5, 449, 115], moves: true }

screws:
  A: { at: [150, 62], length: 420, bar: front }
  B: { at: [610, 62], length: 420, bar: front }
  C: { at: [380, 498], length: 420, bar: back }
foot: { thrust: collar, pulley: 36 teeth 2 mm, material: PETG }
travel: { lowest: 100, lift: 220, nut: 125 }

motor:
  motor: { row: NEMA 17, shaftLength: 42 }
  at: [380, 400]
  plateTop: 10
  torque: 0.25 N m
  pulleys:
    - { loop: low, pulley: 20 teeth 2 mm, hub: down }
    - { loop: high, pulley: 20 teeth 2 mm, hub: up }
loops:
  low: { nodes: [motor, A, B, press], slide: { node: press, direction: 0, from: -15, to: 15 } }
  high: { nodes: [motor, C], slide: { direction: 90 } }
idlers:
  press: { at: [395, 350], idler: two F625, side: outside }

plate:
  at: [380, 280]
  size: [420, 330]
  thickness: 6
  temperature: 90
  mounts:
    one: { at: [200, 130], type: fixed, bar: arm-front }
    two: { at: [560, 130], type: slot, bar: arm-front }
    three: { at: [380, 430], type: free, bar: arm-back }
  heater: { size: [300, 220], power: 400 W, volts: 230 }

carriages:
  left: { post: post-left, arms: [side-left] }
  right: { post: post-right, arms: [side-right] }
masses:
  nuts: { mass: 0.4 kg, at: [380, 200] }
print: 2 kg
`,
  "one-belt.yaml": `# yaml-language-server: $schema=../schemas/stage.json
# One belt round a motor and a screw, with nothing near it: a plan for trying belts, not a machine that goes together.
# explain and docs/messages.md spoil it with one setting after the other. Invented.
format: 1
stage: one-belt

bars:
  rail: { bar: 30x30 slot 8, from: [-300, -47, -15], to: [1200, -47, -15] }
  arm-front: { bar: 30x30 slot 8, from: [300, -784, 115], to: [900, -784, 115], moves: true }
  arm-back: { bar: 30x30 slot 8, from: [300, -416, 115], to: [900, -416, 115], moves: true }
  side: { bar: 30x30 slot 8, from: [315, -769, 115], to: [315, -431, 115], moves: true }
screws:
  A: { at: [300, 0], length: 420, top: free, bar: rail, foot: { pulley: 40 teeth 2 mm } }
foot: { thrust: collar }
motor:
  at: [0, 0]
  pulleys:
    - { loop: one, pulley: { row: 40 teeth 2 mm, bore: 5 } }
loops:
  one: { nodes: [motor, A] }
plate:
  at: [600, -600]
  size: [420, 330]
  mounts:
    one: { at: [420, -750], type: fixed, bar: arm-front }
    two: { at: [780, -750], type: slot, bar: arm-front }
    three: { at: [600, -450], type: free, bar: arm-back }
`,
} as const;

export type ExamplePlan = keyof typeof EXAMPLE_PLANS;
