import type { Component } from 'solid-js';
import type { KindName } from '../../solver/exercises/contract.ts';
import type { ExerciseProps } from '../exercise/frame.tsx';

/** The view of each kind of exercise, fetched when one of it is to be practised. */
export const VIEWS: { readonly [K in KindName]: () => Promise<Component<ExerciseProps<K>>> } = {
  sum: async () => (await import('../exercise/sum.tsx')).SumExercise,
  number: async () => (await import('../exercise/number.tsx')).NumberExercise,
  mark: async () => (await import('../exercise/mark.tsx')).MarkExercise,
  row: async () => (await import('../exercise/row.tsx')).RowExercise,
  spot: async () => (await import('../exercise/spot.tsx')).SpotExercise,
  order: async () => (await import('../exercise/order.tsx')).OrderExercise,
  choose: async () => (await import('../exercise/choose.tsx')).ChooseExercise,
  say: async () => (await import('../exercise/say.tsx')).SayExercise,
};
