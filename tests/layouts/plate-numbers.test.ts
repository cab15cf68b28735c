import { expect, it } from 'vitest';
import { numberExercises, numberPlates } from '../../src/layouts/plate-numbers.ts';

const empty = '<span class="plate-number" data-plate-number></span>';

it('numbers the plates in the order in which they stand', () => {
  expect(numberPlates(`${empty}<p>between</p>${empty}`)).toBe(
    '<span class="plate-number" data-plate-number>Plate 1</span><p>between</p><span class="plate-number" data-plate-number>Plate 2</span>',
  );
});

it('leaves a number that a page has given, and does not count it', () => {
  const given = '<span data-plate-number>Plate 7</span>';
  expect(numberPlates(`${given}${empty}`)).toBe(`${given}${empty.replace('></', '>Plate 1</')}`);
});

it('numbers the exercises in the order in which they stand, apart from the plates', () => {
  const exercise = '<h3>Exercise<span data-exercise-number></span></h3>';
  const plate = '<span class="plate-number" data-plate-number></span>';
  expect(numberExercises(exercise + plate + exercise)).toBe(
    `<h3>Exercise<span data-exercise-number> 1</span></h3>${plate}<h3>Exercise<span data-exercise-number> 2</span></h3>`,
  );
});
